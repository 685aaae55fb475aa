namespace Saponify.Analysis.Rules;

internal sealed class NameExclusionsByTheirClass() : FormulaRule(new("SFY6005", "NameExclusionsByTheirClass", Severity.Warning,
    "An exclusion that excludes nothing",
    "A word that is no class and no material passes every formula: the soap looks checked and is not.")
{
    Messages = [new("NoClass", "\"{word}\" excludes nothing; write {classes}")],
})
{
    private static readonly (string Word, string Classes)[] s_words =
    [
        ("vegan", "animal"), ("animals", "animal"), ("vegetarian", "animal"), ("insect", "animal"), ("dairy", "milk"), ("lactose-free", "milk"), ("cream", "milk"), ("eggs", "egg"),
        ("nut", "tree-nut and peanut"), ("nuts", "tree-nut and peanut"), ("tree nut", "tree-nut"), ("tree nuts", "tree-nut"), ("tree-nuts", "tree-nut"), ("peanuts", "peanut"),
        ("gluten", "wheat, barley and oat"), ("soya", "soy"), ("soybean", "soy"), ("bee", "bee-product"), ("bee products", "bee-product"), ("sulfite", "sulphite"), ("sulphites", "sulphite"),
        ("palm", "palm-oil, palm-kernel-oil and their fractions"), ("oats", "oat"),
    ];

    public override string? WhyNotApplicable(FormulaFacts facts) => Exclusions.WhyNone(facts);

    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Setup.Excluded.Count; i++)
        {
            string word = context.Setup.Excluded[i];
            foreach ((string meant, string classes) in s_words)
            {
                if (Ingredient.Same(meant, word) && !Ingredient.All(context.Facts).Any(m => m.HasName(word) || m.Holds(word)))
                    context.Report("NoClass", FormulaPath.Setup.Member("excluded").Item(i, word.Trim()), [Arg.Of("word", word.Trim()), Arg.Of("classes", classes)]);
            }
        }
    }
}
