namespace Saponify;

/// <summary>What is wrong with a weighing of a series.</summary>
public enum CureFaultKind : byte
{
    /// <summary>Its date is before that of the weighing above it.</summary>
    DateBackwards,

    /// <summary>It is about ten or a hundred times what the others are: a decimal slipped, or another unit.</summary>
    DecimalSlip,

    /// <summary>More was lost than the bar had to evaporate.</summary>
    ImpossibleLoss,

    /// <summary>Heavier than before by more than scale and air explain: a drying bar does not gain.</summary>
    Gain,
}
