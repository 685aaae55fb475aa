namespace Saponify.Analysis.Rules;

internal sealed class DoubtPurePotash() : FormulaRule(new("SFY2009", "DoubtPurePotash", Severity.Warning,
    "Solid potassium hydroxide said to be pure",
    "Flakes hold 8 to 15 % of water: reckoned as pure, the soap has that much more superfat than planned. Common practice, no source.")
{
    Messages = [new("Pure", "the potassium hydroxide is said to be pure to {purity}; solid, it nearly always has 85 to 92 %")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 95, 80, 100, "Highest purity of solid potassium hydroxide that is not doubted; of a range the low end counts.");

    public override void Analyze(in RuleContext context)
    {
        foreach ((int i, string line, Alkali alkali) in Places.Alkalis(context.Formula))
        {
            if (alkali is { Kind: AlkaliKind.PotassiumHydroxide, IsSolution: false, Purity.Kind: not PurityKind.LabelMinimum } && alkali.Purity.LowFraction * 100 > context.Option(Highest) + 1e-9)
                context.Report("Pure", Places.Alkali(i, line).Member("purity"), [Arg.Of("purity", alkali.Purity.ToString())]);
        }
    }
}
