using Saponify.Internals;

namespace Saponify;

/// <summary>The difference of two formulas, line by line and member by member, in the texts of the formula file.</summary>
internal static class FormulaDifference
{
    internal static ValueList<Change> Of(Formula before, Formula after)
    {
        List<Change> changes = [];
        Compare(changes, FormulaPath.Root.Member("name"), before.Name, after.Name);
        Lists(changes, FormulaPath.Fats, before.Fats, after.Fats, f => f.Line, Members);
        Compare(changes, FormulaPath.Alkali, Members(before.Alkali), Members(after.Alkali));
        Alkalis(changes, before.Alkali, after.Alkali);
        Compare(changes, FormulaPath.Liquids, Members(before.Liquids), Members(after.Liquids));
        Lists(changes, FormulaPath.HeldBack, before.Liquids.HeldBack, after.Liquids.HeldBack, h => h.Line, Members);
        Lists(changes, FormulaPath.Additives, before.Additives, after.Additives, a => a.Line, Members);
        Lists(changes, FormulaPath.Root.Member("suppressions"), before.Suppressions, after.Suppressions, s => s.Path.Length == 0 ? s.RuleId : s.RuleId + " " + s.Path, s => [("reason", s.Reason), ("author", s.Author), ("until", s.Until is { } day ? Text.Day(day) : null)]);
        return changes.ToValueList();
    }

    private static (string Name, string? Value)[] Members(FatPortion fat) =>
    [
        ("fat", fat.Fat.Id), ("mass", AmountWriter.Write(fat.Mass)), ("volume", fat.Poured is { } volume ? AmountWriter.Write(volume) : null), ("stage", fat.IsLate ? "trace" : "fats"),
        ("lot", fat.Fat.Lot?.Name), ("saponificationValue", fat.Fat.Saponification?.Value.ToString()),
    ];

    private static (string Name, string? Value)[] Members(AlkaliPlan plan) => plan is SuperfatTarget target
        ? [("superfat", AmountWriter.Percent(target.SuperfatFraction)), ("of", target.Basis == SuperfatBasis.AllFat ? "allFat" : "listedFats")]
        : [("superfat", null), ("of", null)];

    private static void Alkalis(List<Change> changes, AlkaliPlan before, AlkaliPlan after)
    {
        FormulaPath path = FormulaPath.Alkali.Member("alkalis");
        Lists(changes, path, Lines(before), Lines(after), l => l.Line, l => l.Members);
    }

    private static ValueList<AlkaliLine> Lines(AlkaliPlan plan) => plan is SuperfatTarget target
        ? [.. target.Alkalis.Select(a => Line(a.Line, a.Alkali, a.Basis == AlkaliShareBasis.Hydroxide ? "shareOfHydroxide" : "shareOfMass", AmountWriter.Percent(a.Fraction)))]
        : [.. ((WeighedAlkali)plan).Alkalis.Select(a => Line(a.Line, a.Alkali, "mass", AmountWriter.Write(a.Mass)))];

    private static AlkaliLine Line(string line, Alkali alkali, string member, string amount) =>
        new(line, [("alkali", alkali.ToString()), ("boundWater", alkali.BoundWaterFraction == alkali.UsualBoundWater ? null : AmountWriter.Percent(alkali.BoundWaterFraction)), (member, amount)]);

    private static (string Name, string? Value)[] Members(LiquidPlan plan) =>
    [
        ("lyeConcentration", plan.Rule == WaterRule.LyeConcentration ? AmountWriter.Percent(plan.Fraction) : null),
        ("waterToAlkali", plan.Rule == WaterRule.WaterToAlkali ? Text.Exact(plan.Fraction) + " : 1" : null),
        ("waterToFats", plan.Rule == WaterRule.WaterToFats ? AmountWriter.Percent(plan.Fraction) : null),
        ("totalWater", plan.Rule == WaterRule.TotalWater ? AmountWriter.Write(plan.Mass!.Value) : null),
        ("lyeLiquid", plan.LyeLiquid.Liquid.Id + Form(plan.LyeLiquid.Temperature, plan.LyeLiquid.IsFrozen) + (plan.Weighed is { } weighed ? ", " + AmountWriter.Write(weighed.Mass) : "")),
    ];

    private static (string Name, string? Value)[] Members(LiquidPortion portion) =>
    [
        ("liquid", portion.Liquid.Id), ("mass", AmountWriter.Write(portion.Mass)), ("volume", portion.Poured is { } volume ? AmountWriter.Write(volume) : null),
        ("temperature", portion.Temperature is { } temperature ? AmountWriter.Write(temperature) : null), ("frozen", portion.IsFrozen ? "true" : null),
    ];

    private static (string Name, string? Value)[] Members(AdditivePortion portion) =>
    [
        ("additive", portion.Additive.Id), ("mass", portion.Mass is { } mass ? AmountWriter.Write(mass) : null), ("ofFats", portion.OfFatsFraction is { } fraction ? AmountWriter.Percent(fraction) : null),
        ("amount", portion.IsAmountUnknown ? "unknown" : null), ("stage", portion.Stage.InFile()),
    ];

    private static string Form(UnitsNet.Temperature? temperature, bool frozen) => (frozen ? ", frozen" : "") + (temperature is { } at ? ", " + AmountWriter.Write(at) : "");

    private static void Lists<T>(List<Change> changes, FormulaPath list, ValueList<T> before, ValueList<T> after, Func<T, string> line, Func<T, (string, string?)[]> members) where T : IEquatable<T>
    {
        for (int i = 0; i < before.Count; i++)
        {
            FormulaPath path = list.Item(i, line(before[i]));
            int index = Find(after, line, line(before[i]));
            if (index < 0)
                changes.Add(new(path, Whole(members(before[i])), null));
            else if (!before[i].Equals(after[index]))
                Compare(changes, path, members(before[i]), members(after[index]));
        }
        for (int i = 0; i < after.Count; i++)
        {
            if (Find(before, line, line(after[i])) < 0)
                changes.Add(new(list.Item(i, line(after[i])), null, Whole(members(after[i]))));
        }
    }

    private static int Find<T>(ValueList<T> list, Func<T, string> line, string id) where T : IEquatable<T>
    {
        for (int i = 0; i < list.Count; i++)
        {
            if (line(list[i]) == id)
                return i;
        }
        return -1;
    }

    private static void Compare(List<Change> changes, FormulaPath path, (string Name, string? Value)[] before, (string Name, string? Value)[] after)
    {
        foreach ((string name, string? value) in before)
            Compare(changes, path.Member(name), value, Array.Find(after, a => a.Name == name).Value);
        foreach ((string name, string? value) in after)
        {
            if (!Array.Exists(before, b => b.Name == name))
                Compare(changes, path.Member(name), null, value);
        }
    }

    private static void Compare(List<Change> changes, FormulaPath path, string? before, string? after)
    {
        if (before != after)
            changes.Add(new(path, before, after));
    }

    private static string Whole((string Name, string? Value)[] members) => string.Join(", ", members.Where(m => m.Value is not null).Select(m => $"{m.Name} {m.Value}"));

    private sealed record AlkaliLine(string Line, (string, string?)[] Members)
    {
        public bool Equals(AlkaliLine? other) => other is not null && Line == other.Line && Members.AsSpan().SequenceEqual(other.Members);

        public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Line);
    }
}
