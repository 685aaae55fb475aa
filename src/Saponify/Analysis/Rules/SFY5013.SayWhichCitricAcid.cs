using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class SayWhichCitricAcid() : FormulaRule(new("SFY5013", "SayWhichCitricAcid", Severity.Info,
    "Which citric acid it is moves the superfat",
    "The two kinds of citric acid look alike, and a gram of one takes up a tenth less lye than a gram of the other: the bag says which it is.")
{
    Messages = [new("Which", "{acid}: if it is the {other} kind, the superfat is {superfat}, not {planned}")],
    Sources = ["ciaaw-2021"],
    Options = [Least],
})
{
    internal static readonly RuleOption Least = new("least", "%", 0.5, 0, 10, "Least change of the superfat, in points, that is remarked on.");

    /// <summary>Acid in a gram of the monohydrate: 192.12 of 210.14 g/mol. Source: ciaaw-2021.</summary>
    private const double InMonohydrate = 1 - (Molar.Water / 210.138);

    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.OfAllFat is null ? "no fat takes up lye" : null;

    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            bool anhydrous = portion.Additive.Id == "citric-acid-anhydrous";
            if (!anhydrous && portion.Additive.Id != "citric-acid-monohydrate")
                continue;
            double acid = portion.GramsFor(context.Facts.ListedGrams) * portion.Additive.AcidHydroxidePerGram, planned = context.Facts.Balance.OfAllFat!.Value;
            double change = acid * ((anhydrous ? InMonohydrate : 1 / InMonohydrate) - 1) / context.Facts.Balance.AllFatHydroxide;
            if (Math.Abs(change) * 100 >= context.Option(Least) && acid > 0)
                context.Report("Which", Places.Additive(context.Formula, i),
                    [Arg.Of("acid", portion.Additive.Name), Arg.Of("other", anhydrous ? "monohydrate" : "anhydrous"), Arg.Of("superfat", (planned + change) * 100, "%"), Arg.Of("planned", planned * 100, "%")]);
        }
    }
}
