namespace Saponify.Analysis.Rules;

internal sealed class KeepToUsualDoses() : FormulaRule(new("SFY5001", "KeepToUsualDoses", Severity.Info,
    "More of an additive than is usual",
    "Doses of the trade are where an additive works and the bar stays whole; beyond them bars crumble, sweat, stain or scratch.")
{
    Messages =
    [
        new("Above", "{additive} comes to {dose} of the fats, more than the usual {limit}"),
        new("AboveWithCaution", "{additive} comes to {dose} of the fats, more than the usual {limit}; {caution}"),
    ],
    Sources = ["common-practice"],
    Options = [Times],
})
{
    internal static readonly RuleOption Times = new("times", "times", 1, 0.5, 10, "How many times the upper end of a usual dose is not remarked on.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.HasFat ? null : "no listed fat takes up lye";

    /// <summary>Kinds of which another rule, as it is set, speaks already.</summary>
    private static bool IsSaidElsewhere(in RuleContext context, Additive additive) => additive.Kind switch
    {
        AdditiveKind.Fragrance => Doses.Scent(context.Facts) * 100 > context.OptionOf("SFY5102", LimitScent.Highest) * (1 + 1e-9),
        AdditiveKind.Acid => context.Facts.Balance.AcidHydroxide > context.Facts.Balance.Hydroxide,
        AdditiveKind.Sugar or AdditiveKind.MilkSolids => context.Facts.SugarOfFats.Percent > context.OptionOf("SFY3003", WatchTheSugar.Highest),
        AdditiveKind.Salt => Doses.IsCommonSalt(additive),
        _ => Doses.IsSolid(additive) && Doses.Solids(context.Facts) * 100 > context.OptionOf("SFY5010", LimitSolids.Highest) * (1 + 1e-9),
    };

    public override void Analyze(in RuleContext context)
    {
        double times = context.Option(Times);
        ValueList<AdditivePortion> additives = context.Formula.Additives;
        for (int i = 0; i < additives.Count; i++)
        {
            Additive additive = additives[i].Additive;
            if (additive.UsualDose?.High is not { } usual || additives.Take(i).Any(p => p.Additive.Id == additive.Id))
                continue;
            double dose = Doses.OfFats(context.Facts, a => a.Id == additive.Id) * 100, limit = usual.DecimalFractions * 100 * times;
            if (dose <= limit * (1 + 1e-9) || IsSaidElsewhere(in context, additive))
                continue;
            context.Report(additive.Caution is null ? "Above" : "AboveWithCaution", Places.Additive(context.Formula, i),
                [Arg.Of("additive", additive.Name), Arg.Of("dose", dose, "%"), Arg.Of("limit", limit, "%"), Arg.Of("caution", Places.Clause(additive.Caution))]);
        }
    }
}
