namespace Saponify.Analysis.Rules;

internal sealed class KeepBicarbonateOutOfLye() : FormulaRule(new("SFY2023", "KeepBicarbonateOutOfLye", Severity.Warning,
    "Bicarbonate turns lye into soda",
    "Sodium bicarbonate takes up hydroxide and gives carbonate, which does not saponify fat: an unplanned superfat.")
{
    Messages = [new("Takes", "{additive} takes up to {lye} of the alkali and turns it into carbonate")],
})
{
    private static Additive? Additive(Formula formula, FormulaPath path)
    {
        for (int i = 0; i < formula.Additives.Count; i++)
        {
            if (path.Equals(FormulaPath.Additives.Item(i, formula.Additives[i].Line)))
                return formula.Additives[i].Additive;
        }
        return null;
    }

    public override void Analyze(in RuleContext context)
    {
        foreach (PossibleUptake possible in context.Facts.Plan.PossibleUptake)
        {
            if (possible.AtMost is { } most && Additive(context.Formula, possible.Path) is { Contents.AcidKind.Id: "bicarbonate" } additive)
                context.Report("Takes", possible.Path, [Arg.Of("additive", additive.Name), Arg.Of("lye", most)]);
        }
    }
}
