using Saponify.Internals;

namespace Saponify.Analysis.Rules;

/// <summary>A bare minimum on a label: what it means for the superfat.</summary>
internal static class Certificates
{
    internal static void Report(in RuleContext context, AlkaliKind kind, string message)
    {
        foreach ((int index, string line, Alkali alkali) in Places.Alkalis(context.Formula))
        {
            if (alkali.Kind != kind || alkali.Purity.Kind != PurityKind.LabelMinimum || context.Facts.Balance.OfAllFat is not { } superfat)
                continue;
            double least = 1 - ((1 - superfat) * alkali.Purity.LowFraction);
            context.Report(message, Places.Alkali(index, line).Member("purity"), [Arg.Of("alkali", alkali.ToString()), Arg.Of("least", alkali.Purity.Low), Arg.Of("superfat", Stored.ToRatio(least))]);
        }
    }
}
