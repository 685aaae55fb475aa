namespace Saponify.Analysis.Rules;

internal sealed class MakeTheBarsWanted() : FormulaRule(new("SFY6105", "MakeTheBarsWanted", Severity.Warning,
    "Fewer bars than wanted",
    "An order for more bars than the moulds give can't be met by one batch, however well they are filled.")
{
    Messages = [new("TooFew", "{moulds} of this mould, full, gives {bars} bars for sale, and {wanted} are wanted: that takes {needed}")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.WantedBars is null ? "it is not said how many bars are wanted" : facts.Setup.Mould is null ? "no mould is given"
        : Moulding.Layout(facts.Setup) is not { } layout ? "it is not said how the block is cut, or it can't be cut so" : layout.Saleable > 0 ? null : "no bar is left to sell, whatever is poured";

    public override void Analyze(in RuleContext context)
    {
        BarLayout layout = Moulding.Layout(context.Setup)!;
        double bars = (double)context.Setup.Moulds * layout.Saleable;
        int wanted = context.Setup.WantedBars!.Value;
        if (bars < wanted)
            context.Report("TooFew", FormulaPath.Setup.Member("wantedBars"), [Arg.Of("moulds", context.Setup.Moulds, null), Arg.Of("bars", bars, null), Arg.Of("wanted", wanted, null), Arg.Of("needed", Math.Ceiling((double)wanted / layout.Saleable), null)]);
    }
}
