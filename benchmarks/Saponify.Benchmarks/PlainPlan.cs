namespace Saponify.Benchmarks;

/// <summary>What a <see cref="BatchPlan"/> holds: the formula, the figures, and room for its six tables, which are made when they are asked for.</summary>
public sealed class PlainPlan
{
    public required object Formula { get; init; }

    public required PlainBalance Balance { get; init; }

    public required bool RuleCanBeMet { get; init; }

    public object? Alkalis { get; set; }

    public object? Additives { get; set; }

    public object? LyeUptake { get; set; }

    public object? PossibleUptake { get; set; }

    public object? Water { get; set; }

    public object? LiquidWindow { get; set; }
}
