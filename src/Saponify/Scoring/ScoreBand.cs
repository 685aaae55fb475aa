namespace Saponify;

/// <summary>A stretch of a score with its words. A description, never a target. Immutable; equality by content.</summary>
public sealed record ScoreBand
{
    internal ScoreBand(double from, string words) => (From, Words) = (from, words);

    /// <summary>Where the band begins, in points from 0 to 100; it ends where the next one begins.</summary>
    public double From { get; }

    /// <summary>The band in words.</summary>
    public string Words { get; }

    /// <summary>The words.</summary>
    public override string ToString() => Words;
}
