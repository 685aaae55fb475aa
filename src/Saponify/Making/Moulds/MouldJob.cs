using UnitsNet;

namespace Saponify;

/// <summary>What the maker said about mould, cut and cure.</summary>
internal sealed record MouldJob
{
    internal required Mould Mould { get; init; }

    internal CuttingPlan? Cut { get; init; }

    internal int Samples { get; init; }

    internal Temperature? Pour { get; init; }

    internal bool IsInsulated { get; init; }

    internal Ratio LeftInPot { get; init; }

    /// <summary>Loss from the pour to the cured bar, as the maker knows it.</summary>
    internal Ratio? Loss { get; init; }

    internal int? WantedBars { get; init; }

    internal Mass? WantedMass { get; init; }
}
