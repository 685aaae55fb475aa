using Saponify.Analysis;

namespace Saponify.Tests.Analysis;

/// <summary>A rule of an embedding app: names shall be short.</summary>
internal sealed class KeepNamesShort(string id = "ACME1") : FormulaRule(new(id, "KeepNamesShort", Severity.Warning, "A long name", "Labels have little room.")
{
    Messages = [new("Long", "the name {name} has {length} letters, at most {limit} are wanted")],
    Options = [Limit],
})
{
    internal static readonly RuleOption Limit = new("limit", "letters", 10, 1, 100, "Longest name.");

    public override void Analyze(in RuleContext context)
    {
        double limit = context.Option(Limit);
        string name = context.Formula.Name;
        if (name.Length <= limit)
            return;
        context.Report("Long", FormulaPath.Root.Member("name"), [Arg.Of("name", name), Arg.Of("length", name.Length, null), Arg.Of("limit", limit, null)],
            [new("Cut", $"Cut the name to {(int)limit} letters", FixEffect.KeepsProduct, f => f with { Name = f.Name[..(int)limit] })]);
    }
}

/// <summary>A rule that finds something and then throws.</summary>
internal sealed class Throw(string id = "ACME2") : FormulaRule(new(id, "Throw", Severity.Info, "Throws", "None.") { Messages = [new("Found", "found {it}")] })
{
    public override void Analyze(in RuleContext context)
    {
        context.Report("Found", FormulaPath.Root, [Arg.Of("it", "something")]);
        throw new InvalidOperationException("out of order");
    }
}

/// <summary>A rule that needs a date, and one finding for every fat.</summary>
internal sealed class NameEveryFat(string id = "ACME3", Severity floor = Severity.Hidden) : FormulaRule(new(id, "NameEveryFat", Severity.Error, "Names fats", "None.") { Messages = [new("Fat", "{fat}")], Floor = floor })
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.Today is null ? "no date is given" : null;

    public override void Analyze(in RuleContext context)
    {
        for (int i = context.Formula.Fats.Count - 1; i >= 0; i--)
            context.Report("Fat", FormulaPath.Root.Member("fats").Item(i, context.Formula.Fats[i].Line), [Arg.Of("fat", context.Formula.Fats[i].Fat.Name)]);
    }
}

/// <summary>A rule that asks for an end, and gives up.</summary>
internal sealed class Cancel(CancellationTokenSource source) : FormulaRule(new("ACME5", "Cancel", Severity.Info, "Gives up", "None.") { Messages = [new("Unsaid", "never said")] })
{
    public override void Analyze(in RuleContext context)
    {
        source.Cancel();
        throw new OperationCanceledException();
    }
}
