namespace Saponify;

/// <summary>What a fat is chemically; it decides how it takes up lye.</summary>
public enum FatClass : byte
{
    /// <summary>Oil or fat: esters of glycerol. Takes up lye by its saponification value and frees glycerol.</summary>
    Triglyceride,

    /// <summary>Free fatty acid, such as stearic acid. Takes up lye at once by its acid value, frees water, no glycerol.</summary>
    FreeAcid,

    /// <summary>Wax. In cold process only its free acids are counted: the low end of its acid value.</summary>
    Wax,
}
