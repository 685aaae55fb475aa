namespace Saponify;

/// <summary>What a purity statement says.</summary>
public enum PurityKind : byte
{
    /// <summary>One value from a certificate.</summary>
    Certified,

    /// <summary>A range, such as 97 to 100 %.</summary>
    Range,

    /// <summary>Only a minimum, such as "at least 85 %" on a jar.</summary>
    LabelMinimum,
}
