namespace Saponify.Internals;

/// <summary>Evidence classes as people read them.</summary>
internal static class EvidenceText
{
    internal static string Of(Evidence evidence) => evidence switch
    {
        Evidence.Standard => "standard",
        Evidence.Pharmacopoeia => "pharmacopoeia",
        Evidence.Handbook => "handbook",
        Evidence.Measured => "measured",
        Evidence.Compilation => "compilation",
        Evidence.Computed => "computed",
        _ => "rests on memory, check it",
    };
}
