namespace Saponify;

/// <summary>Ids of problems in formula files: category 1, structure and units. Never reused.</summary>
internal static class ProblemIds
{
    internal const string Syntax = "SFY1001";
    internal const string UnknownMember = "SFY1002";
    internal const string DuplicateMember = "SFY1003";
    internal const string MissingMember = "SFY1004";
    internal const string WrongType = "SFY1005";
    internal const string WrongAmount = "SFY1006";
    internal const string OutOfRange = "SFY1007";
    internal const string UnknownMaterial = "SFY1008";
    internal const string UnknownChoice = "SFY1009";
    internal const string Conflict = "SFY1010";
    internal const string SharesOff = "SFY1011";
    internal const string WrongFormat = "SFY1012";
    internal const string WrongLine = "SFY1013";
    internal const string TooLarge = "SFY1014";
    internal const string DataDiffers = "SFY1015";
    internal const string Converted = "SFY1016";
    internal const string NoDensity = "SFY1017";
    internal const string OtherTables = "SFY1018";
}
