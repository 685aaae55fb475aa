using Microsoft.DotNet.Interactive.Formatting;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// How sure the superfat of all fat is. Each doubt is a rectangular distribution on its stated range: one saponification value for a fat
/// wherever it comes in, the purity, each weighing, the composition of a liquid where its table states a range. Immutable; equality by content.
/// </summary>
/// <remarks>
/// Standard uncertainty by the law of propagation (jcgm-100), sensitivities at the middles. The interval and the probability come from the
/// convolution of the linearised parts on a fixed grid, cut at the corners; tests hold them against Monte Carlo (jcgm-101).
/// </remarks>
[TypeFormatterSource(typeof(NotebookFormatters), PreferredMimeTypes = [NotebookFormatters.Html])]
public sealed record Margin : IShownAsHtml
{
    internal Margin()
    {
    }

    internal double NominalFraction { get; init; }

    internal double BestEstimateFraction { get; init; }

    internal double WorstFraction { get; init; }

    internal double BestFraction { get; init; }

    internal double UncertaintyFraction { get; init; }

    internal double LowFraction { get; init; }

    internal double HighFraction { get; init; }

    internal double CoverageFraction { get; init; }

    internal double LyeHeavyProbability { get; init; }

    /// <summary>The superfat of the plan: at the saponification values used and the top of each purity, lower than the best estimate on purpose.</summary>
    public Ratio Nominal => Stored.ToRatio(NominalFraction);

    /// <summary>The superfat at the middle of every range.</summary>
    public Ratio BestEstimate => Stored.ToRatio(BestEstimateFraction);

    /// <summary>The lowest superfat that the stated ranges allow: every doubt at its unlucky end.</summary>
    public Ratio Worst => Stored.ToRatio(WorstFraction);

    /// <summary>The highest superfat that the stated ranges allow.</summary>
    public Ratio Best => Stored.ToRatio(BestFraction);

    /// <summary>Standard uncertainty of the best estimate, in superfat.</summary>
    public Ratio StandardUncertainty => Stored.ToRatio(UncertaintyFraction);

    /// <summary>Low end of the interval; equal tails, never below <see cref="Worst"/>.</summary>
    public Ratio Low => Stored.ToRatio(LowFraction);

    /// <summary>High end of the interval, never above <see cref="Best"/>.</summary>
    public Ratio High => Stored.ToRatio(HighFraction);

    /// <summary>The probability that the interval covers.</summary>
    public Ratio Coverage => Stored.ToRatio(CoverageFraction);

    /// <summary>The probability, under the stated distributions, that the alkali exceeds what acids and all fat take up.</summary>
    public Ratio ProbabilityOfLyeHeavy => Stored.ToRatio(LyeHeavyProbability);

    /// <summary>What the uncertainty comes from, largest first.</summary>
    public ValueList<MarginCause> Causes { get; internal init; }

    /// <summary>Materials that take up lye and whose tables state no range: their doubt is not in the margin.</summary>
    public ValueList<string> NoData { get; internal init; }

    /// <summary>The margin in one line and a small picture; invariant.</summary>
    public override string ToString() => MarginText.Of(this);

    /// <summary>The same as a fragment of HTML with a picture in SVG, without script, every text escaped; notebooks show it by themselves.</summary>
    public string ToHtml() => MarginHtml.Of(this);
}
