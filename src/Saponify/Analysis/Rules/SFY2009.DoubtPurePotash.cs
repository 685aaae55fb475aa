namespace Saponify.Analysis.Rules;

internal sealed class DoubtPurePotash() : FormulaRule(new("SFY2009", "DoubtPurePotash", Severity.Warning,
    "Solid potassium hydroxide said to be pure",
    "Flakes hold 8 to 15 % of water: reckoned as pure, the soap has that much more superfat than planned. Common practice, no source.")
{
    Messages = [new("Pure", "{alkali} is said to be certified at {purity}; solid potassium hydroxide nearly always has 85 to 92 %")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 95, 80, 100, "Highest certified purity of solid potassium hydroxide that is not doubted.");

    public override void Analyze(in RuleContext context)
    {
        foreach ((int i, string line, Alkali alkali) in Places.Alkalis(context.Formula))
        {
            if (alkali is { Kind: AlkaliKind.PotassiumHydroxide, IsSolution: false, Purity.Kind: PurityKind.Certified } && alkali.Purity.HighFraction * 100 > context.Option(Highest))
                context.Report("Pure", Places.Alkali(i, line).Member("purity"), [Arg.Of("alkali", alkali.ToString()), Arg.Of("purity", alkali.Purity.High)]);
        }
    }
}
