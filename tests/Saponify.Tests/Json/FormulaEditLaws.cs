using System.Text;
using System.Text.Json.Nodes;
using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>Laws of the edit in place, over files as programs write them and as people do: odd spacing, comments, tabs, CR LF, a byte order mark.</summary>
public class FormulaEditLaws
{
    [Law]
    public Property Edit_ToAnyFormula_ReadsBackAsThatFormula() => Prop.ForAll(Cases.Arbitrary(), c =>
    {
        byte[] edited = c.File.Edit(c.Changed);
        FormulaFile read = FormulaFile.Read(edited, Pantry.Reference);
        return (read.Problems.Count == 0 && c.Changed.Equals(read.Formula)).Label(Show(c, edited));
    });

    [Law]
    public Property Edit_ToAnEqualFormula_GivesTheSameBytes() => Prop.ForAll(Cases.Arbitrary(), c =>
        c.File.Edit(c.File.Formula! with { Name = c.File.Formula.Name }).AsSpan().SequenceEqual(c.Bytes));

    [Law]
    public Property Edit_OfAMass_ChangesThatSpanAlone() => Prop.ForAll(Cases.Where(c => c.File.Formula!.Fats.Count > 0).Arbitrary(), c =>
    {
        Formula formula = c.File.Formula!;
        FatPortion first = formula.Fats[0];
        FormulaPath path = FormulaPath.Root.Member("fats").Item(0, first.Line).Member(first.Poured is null ? "mass" : "volume");
        Place place = c.File.Locate(path)!.Value;
        byte[] edited = c.File.Edit(formula with { Fats = [first with { Mass = Mass.FromGrams(123.25) }, .. formula.Fats.Skip(1)] });
        if (first.Poured is not null)
            return true;                                      // another member takes the place; the example tests look at it
        byte[] expected = [.. c.Bytes.AsSpan(0, place.Offset), .. "\"123.25 g\""u8, .. c.Bytes.AsSpan(place.Offset + place.Length)];
        return first.Mass.Grams == 123.25 || edited.AsSpan().SequenceEqual(expected);
    });

    [Law]
    public Property Edit_LeavesTheTextOfEveryLineThatDidNotChange() => Prop.ForAll(Cases.Where(c => !c.IsLoose).Arbitrary(), c =>
    {
        byte[] edited = c.File.Edit(c.Changed);
        FormulaFile read = FormulaFile.Read(edited, Pantry.Reference);
        Formula before = c.File.Formula!;
        return Untouched(FormulaPath.Root.Member("fats"), before.Fats, c.Changed.Fats, f => f.Line).Concat(Untouched(FormulaPath.Root.Member("additives"), before.Additives, c.Changed.Additives, a => a.Line))
            .All(line => TextAt(c.File, c.Bytes, line.Before) == TextAt(read, edited, line.After)).Label(Show(c, edited));
    });

    [Law]
    public Property Edit_KeepsWhatStandsBeforeAndAfterTheObject() => Prop.ForAll(Cases.Where(c => Encoding.UTF8.GetString(c.Bytes).EndsWith(Tail, StringComparison.Ordinal)).Arbitrary(), c =>
    {
        string edited = Encoding.UTF8.GetString(c.File.Edit(c.Changed));
        return edited.StartsWith(Head, StringComparison.Ordinal) && edited.EndsWith(Tail, StringComparison.Ordinal);
    });

    private const string Head = "// a head, { \"not\": \"json\" }\r\n";
    private const string Tail = "/* a tail ] } */";

    private sealed record Case(byte[] Bytes, bool IsLoose, FormulaFile File, Formula Changed);

    /// <summary>A file in some style, and a formula that shares some lines with it.</summary>
    private static Gen<Case> Cases { get; } =
        from formula in Any.Formulas
        from other in Any.Formulas
        from seed in Gen.Choose(0, int.MaxValue - 1)
        let written = FormulaFile.Write(formula, Pantry.Reference)
        let isLoose = seed % 2 == 0
        let bytes = Styled(isLoose ? Loose(written, formula) : written, new Random(seed))
        select new Case(bytes, isLoose, Readable(bytes), Mixed(formula, other, new Random(seed)));

    /// <summary>The same formula as people write it: aliases, no ids where the order says enough, no saponification values, defaults spelt out.</summary>
    private static byte[] Loose(byte[] written, Formula formula)
    {
        JsonNode file = JsonNode.Parse(written)!;
        foreach (JsonObject fat in file["fats"]!.AsArray().OfType<JsonObject>())
        {
            if (!fat.ContainsKey("lot"))
                fat.Remove("saponificationValue");
            fat.TryAdd("stage", "fats");
            if (Pantry.Reference.Fat((string)fat["fat"]!).Aliases is [string alias, ..] && Pantry.Reference.Fat(alias).Id == (string)fat["fat"]!)
                fat["fat"] = alias;
        }
        if (file["alkali"]!["superfat"] is not null)
            file["alkali"]!.AsObject().TryAdd("of", "allFat");
        foreach (JsonObject liquid in (file["liquids"]!["heldBack"]?.AsArray() ?? []).OfType<JsonObject>())
            liquid.TryAdd("frozen", false);
        if (file["liquids"]!["lyeLiquid"] is null)
            file["liquids"]!["lyeLiquid"] = new JsonObject { ["liquid"] = "plain water", ["frozen"] = false };
        file.AsObject().TryAdd("additives", new JsonArray());
        file["setup"] = new JsonObject { ["scale"] = new JsonObject { ["step"] = "1 g" } };
        byte[] loose = Bytes(file);
        Assert.True(formula.Equals(Readable(loose).Formula), Encoding.UTF8.GetString(loose));
        foreach (JsonObject line in file["fats"]!.AsArray().Concat(file["alkali"]!["alkalis"]!.AsArray()).OfType<JsonObject>().Where(l => ((string?)l["line"])?.EndsWith("-2", StringComparison.Ordinal) is true))
            line.Remove("line");
        byte[] looser = Bytes(file);
        return formula.Equals(Readable(looser).Formula) ? looser : loose;
    }

    private static byte[] Bytes(JsonNode file) =>
        Encoding.UTF8.GetBytes(file.ToJsonString(new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }).ReplaceLineEndings("\n"));

    private static IEnumerable<(FormulaPath Before, FormulaPath After)> Untouched<T>(FormulaPath list, ValueList<T> before, ValueList<T> after, Func<T, string> id) where T : IEquatable<T> =>
        from one in before.Select((line, i) => (line, i))
        from other in after.Select((line, i) => (line, i))
        where one.line.Equals(other.line)
        select (list.Item(one.i, id(one.line)), list.Item(other.i, id(one.line)));

    private static string TextAt(FormulaFile file, byte[] bytes, FormulaPath path) =>
        file.Locate(path) is { } place ? Encoding.UTF8.GetString(bytes.AsSpan(place.Offset, place.Length)) : throw new InvalidOperationException($"{path} is not in the file");

    private static FormulaFile Readable(byte[] bytes)
    {
        FormulaFile file = FormulaFile.Read(bytes, Pantry.Reference);
        Assert.True(file.Problems.Count == 0, string.Join("\n", file.Problems) + "\n" + Encoding.UTF8.GetString(bytes));
        return file;
    }

    /// <summary>Some parts of one formula and some of the other, lines dropped, added, swapped and changed.</summary>
    private static Formula Mixed(Formula formula, Formula other, Random random) => new(random.Next(4) == 0 ? other.Name : formula.Name)
    {
        Fats = [.. Lines(formula.Fats, other.Fats, random, f => f with { Mass = Mass.FromOunces(random.Next(1, 99)) })],
        Alkali = random.Next(3) == 0 ? other.Alkali : formula.Alkali,
        Liquids = random.Next(3) switch
        {
            0 => other.Liquids,
            1 => formula.Liquids with { HeldBack = [.. Lines(formula.Liquids.HeldBack, other.Liquids.HeldBack, random, h => h.At(Temperature.FromDegreesFahrenheit(random.Next(33, 90))))] },
            _ => formula.Liquids,
        },
        Additives = [.. Lines(formula.Additives, other.Additives, random, a => a.At(Stage.Top))],
    };

    private static List<T> Lines<T>(ValueList<T> own, ValueList<T> others, Random random, Func<T, T> change) where T : IEquatable<T>
    {
        List<T> lines = [.. own];
        for (int i = lines.Count - 1; i >= 0; i--)
        {
            switch (random.Next(8))
            {
                case 0:
                    lines.RemoveAt(i);
                    break;
                case 1:
                    lines[i] = change(lines[i]);
                    break;
                case 2:
                    lines.Insert(random.Next(i + 1), lines[i]);
                    lines.RemoveAt(i + 1);
                    break;
                case 3 when others.Count > 0:
                    lines.Insert(i, others[random.Next(others.Count)]);
                    break;
            }
        }
        return random.Next(12) == 0 ? [] : lines;
    }

    /// <summary>The same JSON with other blanks, new lines and comments between its tokens.</summary>
    private static byte[] Styled(byte[] written, Random random)
    {
        int style = random.Next(5);
        if (style == 0)
            return written;
        string json = Encoding.UTF8.GetString(written);
        if (style == 1)
            return [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(json.ReplaceLineEndings("\r\n").Replace("  ", "\t", StringComparison.Ordinal))];
        StringBuilder text = new(style == 2 ? Head : "");
        bool inText = false;
        for (int i = 0; i < json.Length; i++)
        {
            char c = json[i];
            if (c == '"' && !IsEscaped(json, i))
                inText = !inText;
            if (!inText && c is ' ' or '\n')
                continue;
            bool between = !inText && c is '{' or '}' or '[' or ']' or ',' or ':';
            if (between && style > 2 && c != ':')             // the JSON reader takes no comment between a name and its colon
                text.Append(Trivia(random, style));
            text.Append(c);
            if (between && style > 2)
                text.Append(Trivia(random, style));
        }
        return Encoding.UTF8.GetBytes(text + (style == 2 ? Tail : ""));
    }

    private static bool IsEscaped(string json, int at)
    {
        int slashes = 0;
        while (json[at - 1 - slashes] == '\\')
            slashes++;
        return slashes % 2 == 1;
    }

    private static string Trivia(Random random, int style) => style == 4
        ? random.Next(6) switch { 0 => "\n", 1 => "\n\n    ", 2 => "  ", _ => "" }
        : random.Next(12) switch { 0 => " // , ] }\n", 1 => "/* , { */", 2 => "\r\n  ", 3 => " ", 4 => "\t// é\r\n\t", 5 => " /* \n */ ", _ => "" };

    private static string Show(Case c, byte[] edited) => $"{Encoding.UTF8.GetString(c.Bytes)}\n-----\n{Encoding.UTF8.GetString(edited)}\n-----\n{Encoding.UTF8.GetString(FormulaFile.Write(c.Changed, Pantry.Reference))}";
}
