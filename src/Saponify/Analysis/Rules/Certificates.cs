using Saponify.Internals;

namespace Saponify.Analysis.Rules;

/// <summary>A bare minimum on a label: what it means for the superfat if that alkali has no more, and any other what the plan reckons with.</summary>
internal static class Certificates
{
    internal static void Report(in RuleContext context, AlkaliKind kind, string message)
    {
        LyeBalance balance = context.Facts.Balance;
        ValueList<AlkaliPortion> portions = context.Facts.Plan.Alkalis;
        for (int i = 0; i < portions.Count; i++)
        {
            Alkali alkali = portions[i].Alkali;
            if (alkali.Kind != kind || alkali.Purity.Kind != PurityKind.LabelMinimum)
                continue;
            double missing = portions[i].Grams * alkali.HydroxidePerGram * (1 - alkali.Purity.LowFraction);
            if (!(missing > 0))
                continue;
            double superfat = balance.OfAllFat!.Value + (missing / balance.AllFatHydroxide);
            context.Report(message, Places.Alkali(i, portions[i].Line).Member("purity"), [Arg.Of("alkali", Places.Name(kind)), Arg.Of("least", alkali.Purity.Low), Arg.Of("superfat", Stored.ToRatio(superfat))]);
        }
    }
}
