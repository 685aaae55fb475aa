namespace Saponify.Analysis.Rules;

internal sealed class CountWaxesByTheirAcids() : FormulaRule(new("SFY4005", "CountWaxesByTheirAcids", Severity.Warning,
    "A wax is counted by its whole saponification value",
    "Only the free acids of a wax react in a cold process: lye meant for its esters is left over.")
{
    Messages = [new("Esters", "{wax} is counted with {value}, far above the {acid} of its free acids: the rest hardly takes up lye")],
    Sources = ["bp-beeswax", "bpc-1911"],
    Options = [Slack],
    Floor = Severity.Warning,
})
{
    internal static readonly RuleOption Slack = new("slack", "mg/g", 10, 0, 50, "How far a lot's value may lie above the acid value on file, mg KOH/g.");

    public override void Analyze(in RuleContext context)
    {
        double slack = context.Option(Slack);
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            Fat fat = context.Formula.Fats[i].Fat;
            double acid = (fat.Figures.AcidValue?.High ?? fat.Figures.AcidValue?.Value ?? default).MilligramsKohPerGram;
            if (fat.Class == FatClass.Wax && LotValues.Own(fat) is { } own && !(own <= acid + slack))
                context.Report("Esters", Places.Fat(context.Formula, i), [Arg.Of("wax", fat.Name), Arg.Of("value", own, "mg KOH/g"), Arg.Of("acid", acid, "mg KOH/g")],
                    LotValues.UseTheTable("CountWaxesByTheirAcids", context.Formula, i));
        }
    }
}
