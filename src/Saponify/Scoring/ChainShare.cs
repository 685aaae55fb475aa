using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>The acids of one chain length. Immutable; equality by content.</summary>
public sealed record ChainShare
{
    internal ChainShare(int carbons, double share) => (Carbons, Share) = (carbons, Stored.ToRatio(share));

    /// <summary>Carbon atoms, the carboxyl carbon included.</summary>
    public int Carbons { get; }

    /// <summary>Their share by mass of the known acids.</summary>
    public Ratio Share { get; }
}
