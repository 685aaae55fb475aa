using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>A part of the acids of a bar that no score can count. Immutable; equality by content.</summary>
public sealed record UnscoredPart
{
    internal UnscoredPart(string what, double share, string why) => (What, Share, Why) = (what, Stored.ToRatio(share), why);

    /// <summary>The acid or the fat.</summary>
    public string What { get; }

    /// <summary>Its share by mass of all acids; a fat that does not say its acids counts with all of them, a wax with its whole mass.</summary>
    public Ratio Share { get; }

    /// <summary>Why it can't be counted.</summary>
    public string Why { get; }
}
