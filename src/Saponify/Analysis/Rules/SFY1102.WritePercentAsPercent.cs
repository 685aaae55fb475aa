using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class WritePercentAsPercent() : FormulaRule(new("SFY1102", "WritePercentAsPercent", Severity.Warning,
    "A share may be a fraction",
    "0.05 % written for 5 % leaves a superfat of next to nothing; 0.98 % written for a purity of 98 % asks for a hundred times the alkali.")
{
    Messages = [new("Fraction", "{name} is {value}: is {meant} meant?")],
})
{
    public override void Analyze(in RuleContext context)
    {
        foreach ((int i, string line, Alkali alkali) in Places.Alkalis(context.Formula))
        {
            if (alkali.Purity.HighFraction <= 0.01)
                context.Report("Fraction", Places.Alkali(i, line).Member("purity"), [Arg.Of("name", "the purity of the " + Places.Name(alkali.Kind)), Arg.Of("value", alkali.Purity.High), Arg.Of("meant", Stored.ToRatio(alkali.Purity.HighFraction * 100))]);
        }
        if (context.Formula.Alkali is SuperfatTarget { SuperfatFraction: > 0 and <= 0.002 } target)
        {
            double meant = target.SuperfatFraction * 100;
            context.Report("Fraction", Places.Superfat(context.Formula), [Arg.Of("name", "the superfat"), Arg.Of("value", target.Superfat), Arg.Of("meant", Stored.ToRatio(meant))],
                [new("WritePercentAsPercent.Superfat", $"Plan for a superfat of {AmountWriter.Percent(meant)}", FixEffect.ChangesProduct, f => f with { Alkali = ((SuperfatTarget)f.Alkali) with { Superfat = Stored.ToRatio(meant) } })]);
        }
    }
}
