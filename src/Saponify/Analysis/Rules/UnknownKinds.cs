using Saponify.Internals;

namespace Saponify.Analysis.Rules;

/// <summary>What the plan leaves out because its kind is not known.</summary>
internal static class UnknownKinds
{
    internal const string Format = "{what}, {share} of the listed fats: {why}; it is not counted, and the superfat may be higher than planned";

    /// <summary>Reports each part with so much of it, in per cent of the listed fats.</summary>
    internal static void Report(in RuleContext context, string what, Func<Contents, double> fraction, double least)
    {
        foreach (PossibleUptake possible in context.Facts.Plan.PossibleUptake)
        {
            if (!possible.What.StartsWith(what, StringComparison.Ordinal))
                continue;
            Containing part = context.Facts.Parts.First(p => p.Path.Equals(possible.Path));
            double share = part.Grams * fraction(part.Contents) / context.Facts.ListedGrams;
            if (share * 100 >= least)
                context.Report("Unknown", possible.Path, [Arg.Of("what", possible.What), Arg.Of("share", Stored.ToRatio(share)), Arg.Of("why", possible.Why)]);
        }
    }
}
