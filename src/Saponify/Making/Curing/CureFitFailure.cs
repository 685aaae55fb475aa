namespace Saponify;

/// <summary>Why a series tells no final mass.</summary>
public enum CureFitFailure : byte
{
    /// <summary>It does tell: there is a fit.</summary>
    None,

    /// <summary>The series has faults that must be mended first.</summary>
    Faults,

    /// <summary>Fewer than five weighings, or than four days: three numbers are fitted, and the scatter is judged from what is left over.</summary>
    TooFew,

    /// <summary>The loss does not stand out from the scatter of the weighings.</summary>
    NoLoss,

    /// <summary>The bar loses weight, and no end of it is in sight: a straight line fits as well.</summary>
    NoPlateau,
}
