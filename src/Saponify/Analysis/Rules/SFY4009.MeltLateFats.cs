namespace Saponify.Analysis.Rules;

internal sealed class MeltLateFats() : FormulaRule(new("SFY4009", "MeltLateFats", Severity.Info,
    "A late fat is solid at room temperature",
    "A hard fat stirred cold into the batter sets in specks, and one that cools the batter gives a trace that is none. Common practice, no source.")
{
    Messages = [new("Solid", "{fats}: solid at room temperature (it melts above {limit}); melted and warm was expected, or in the fat pot")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "°C", 30, 0, 60, "Highest melting point of a late fat that is not remarked on.");

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.LateHydroxide > 0 ? null : "there is no late fat";

    private static Formula ToTheFatPot(Formula formula, double limit) => formula with { Fats = [.. formula.Fats.Select(p => IsSolid(p, limit) ? Early(p) : p)] };

    private static FatPortion Early(FatPortion late) => (late.Poured is { } volume ? late.Fat.Pouring(volume) : late.Fat.Weighing(late.Mass)) with { Line = late.Line };

    private static bool IsSolid(FatPortion portion, double limit) => portion.IsLate && portion.Grams > 0 && portion.Fat.Figures.Melting?.Value.DegreesCelsius > limit;

    public override void Analyze(in RuleContext context)
    {
        double limit = context.Option(Highest);
        Formula formula = context.Formula;
        FatPortion[] solid = [.. formula.Fats.Where(p => IsSolid(p, limit))];
        if (solid.Length == 0)
            return;
        context.Report("Solid", FormulaPath.Fats, [Arg.Of("fats", Blend.Names(solid.Select(p => p.Fat.Name))), Arg.Of("limit", limit, "°C")],
            [new("MeltLateFats.Early", "Melt it in the fat pot", FixEffect.ChangesProduct, f => ToTheFatPot(f, limit))],
            [.. formula.Fats.Select((p, i) => (p, i)).Where(x => IsSolid(x.p, limit)).Select(x => Places.Fat(formula, x.i))]);
    }
}
