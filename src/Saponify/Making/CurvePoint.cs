namespace Saponify;

/// <summary>One row of a curve in the tables: where it lies, its range, and what supports it.</summary>
internal sealed record CurvePoint(double At, double Low, double High, ValueList<string> Sources, Evidence Evidence, string? Note)
{
    internal double Value => (Low + High) / 2;

    /// <summary>Half the width of the range: the stated error.</summary>
    internal double Error => (High - Low) / 2;
}
