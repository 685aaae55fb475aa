using System.Globalization;
using System.Text.Json;
using Saponify.Analysis;
using Saponify.Internals;

namespace Saponify;

/// <summary>
/// A configuration of the analyzer as JSON: <c>{ "preset": "default", "severity": { "SFY2015": "off", "fats": "info" }, "options": { "SFY2015.highest": "15 %" },
/// "suppressions": [ ... ] }</c>. Unknown ids, keys and values are reported with their place, all at once; what is understood is applied.
/// </summary>
public sealed class AnalyzerConfigFile
{
    private static readonly (string Name, Severity? Value)[] s_severities = [("off", null), ("hidden", Severity.Hidden), ("info", Severity.Info), ("warning", Severity.Warning), ("error", Severity.Error)];

    private AnalyzerConfigFile(AnalyzerConfig config, ValueList<Problem> problems) => (Config, Problems) = (config, problems);

    /// <summary>What was understood; the default configuration when nothing was.</summary>
    public AnalyzerConfig Config { get; }

    /// <summary>What was not understood, in the order of the file.</summary>
    public ValueList<Problem> Problems { get; }

    /// <summary>Reads a configuration.</summary>
    /// <param name="utf8">The bytes of the file, UTF-8, at most <see cref="FormulaFile.LargestBytes"/>.</param>
    /// <param name="rules">The rules it may speak of; those of the library when left out.</param>
    public static AnalyzerConfigFile Read(ReadOnlySpan<byte> utf8, IEnumerable<FormulaRule>? rules = null)
    {
        byte[] copy = utf8.ToArray();
        Reader reader = new(copy, [.. (rules ?? FormulaAnalyzer.BuiltInRules).Select(r => r.Descriptor)]);
        if (copy.Length > FormulaFile.LargestBytes)
            reader.Add(ProblemIds.TooLarge, 0, 0, "", FormattableString.Invariant($"the file has {copy.Length} bytes"), FormattableString.Invariant($"a configuration has at most {FormulaFile.LargestBytes}"));
        else if (JsonPiece.Parse(copy, out int offset, out string? fault) is { } root)
            reader.Read(root);
        else
            reader.Add(ProblemIds.Syntax, offset, 0, "", fault!, null);
        return new(reader.Config, [.. reader.Problems.OrderBy(p => p.Place.Offset)]);
    }

    private sealed class Reader(byte[] utf8, RuleDescriptor[] rules)
    {
        private static readonly string[] s_members = ["preset", "severity", "options", "suppressions"];

        internal List<Problem> Problems { get; } = [];

        internal AnalyzerConfig Config { get; private set; } = AnalyzerConfig.Default;

        internal void Add(string id, int start, int length, string pointer, string text, string? expected) =>
            Problems.Add(new(id, Place.At(utf8, start, length), pointer, text, expected));

        internal void Read(JsonPiece root)
        {
            if (root.Kind != JsonTokenType.StartObject)
            {
                Add(ProblemIds.WrongType, root, "", $"a configuration is {root.KindName}", "write an object { ... }");
                return;
            }
            HashSet<string> seen = new(StringComparer.Ordinal);
            // the preset comes first, since it makes a new configuration
            foreach ((string name, int start, int length, JsonPiece value) in root.Members.OrderBy(m => m.Name == "preset" ? 0 : 1))
            {
                if (!seen.Add(name))
                    Add(ProblemIds.DuplicateMember, start, length, "/" + name, $"\"{name}\" stands twice", "keep one of them");
                else if (name == "preset")
                    ReadPreset(value);
                else if (name == "severity")
                    EachMember(value, "/severity", ReadSeverity);
                else if (name == "options")
                    EachMember(value, "/options", ReadOption);
                else if (name == "suppressions")
                    ReadSuppressions(value);
                else
                    Add(ProblemIds.UnknownMember, start, length, "/" + name, $"there is no member \"{ShapeReader.Short(name)}\" here", "known here: " + string.Join(", ", s_members));
            }
        }

        private void Add(string id, JsonPiece piece, string pointer, string text, string? expected) => Add(id, piece.Start, piece.Length, pointer, text, expected);

        private void ReadPreset(JsonPiece value)
        {
            if (value.Kind == JsonTokenType.String && Enum.GetNames<Preset>().FirstOrDefault(n => JsonNamingPolicy.CamelCase.ConvertName(n) == value.Text) is { } name)
                Config = AnalyzerConfig.Of(Enum.Parse<Preset>(name));
            else
                Add(ProblemIds.UnknownChoice, value, "/preset", "there is no such preset", "write one of: " + string.Join(", ", Enum.GetNames<Preset>().Select(n => $"\"{JsonNamingPolicy.CamelCase.ConvertName(n)}\"")));
        }

        private void EachMember(JsonPiece piece, string pointer, Action<string, (int Start, int Length), JsonPiece, string> read)
        {
            if (piece.Kind != JsonTokenType.StartObject)
            {
                Add(ProblemIds.WrongType, piece, pointer, $"it is {piece.KindName}", "write an object { ... }");
                return;
            }
            foreach ((string name, int start, int length, JsonPiece value) in piece.Members)
                read(name, (start, length), value, $"{pointer}/{name}");
        }

        private void ReadSeverity(string name, (int Start, int Length) at, JsonPiece value, string pointer)
        {
            int index = value.Kind == JsonTokenType.String ? Array.FindIndex(s_severities, s => s.Name == value.Text) : -1;
            if (index < 0)
            {
                Add(ProblemIds.UnknownChoice, value, pointer, "there is no such severity", "write one of: " + string.Join(", ", s_severities.Select(s => $"\"{s.Name}\"")));
                return;
            }
            Severity? severity = s_severities[index].Value;
            if (Array.Find(rules, r => r.Id == name || r.FormerIds.Contains(name, StringComparer.Ordinal)) is { } rule)
            {
                Config = Config.WithSeverity(rule.Id, severity);
                if (rule.Floor > Severity.Hidden && !(severity >= rule.Floor))
                    Add(ProblemIds.Conflict, value, pointer, $"{rule.Id} is a safety rule and stays at {Diagnostic.Word(rule.Floor)}", "accept a finding with a reason instead");
            }
            else if (Enum.GetNames<RuleCategory>().FirstOrDefault(n => JsonNamingPolicy.CamelCase.ConvertName(n) == name) is { } category)
            {
                Config = Config.WithSeverity(Enum.Parse<RuleCategory>(category), severity);
            }
            else
            {
                UnknownRule(name, at, pointer);
            }
        }

        private void ReadOption(string name, (int Start, int Length) at, JsonPiece value, string pointer)
        {
            string[] parts = name.Split('.');
            RuleDescriptor? rule = Array.Find(rules, r => r.Id == parts[0]);
            if (rule is null)
            {
                UnknownRule(parts[0], at, pointer);
                return;
            }
            RuleOption? option = parts.Length == 2 ? rule.Options.FirstOrDefault(o => o.Key == parts[1]) : null;
            if (option is null)
            {
                Add(ProblemIds.UnknownMember, at.Start, at.Length, pointer, $"{rule.Id} has no option \"{ShapeReader.Short(name)}\"",
                    rule.Options.Count == 0 ? "it has none" : "known: " + string.Join(", ", rule.Options.Select(o => $"\"{rule.Id}.{o.Key}\"")));
                return;
            }
            string wanted = $"write a number with its unit from {Text.Exact(option.Least)} to {Text.Exact(option.Most)}, such as \"{Text.Exact(option.Default)} {option.Unit}\"";
            if (value.Kind != JsonTokenType.String || !AmountReader.TryNumber(value.Text, out double number, out ReadOnlySpan<char> unit, out _) || !unit.SequenceEqual(option.Unit))
                Add(ProblemIds.WrongAmount, value, pointer, $"\"{name}\" is no number in {option.Unit}", wanted);
            else if (!(number >= option.Least && number <= option.Most))
                Add(ProblemIds.OutOfRange, value, pointer, $"\"{name}\" is out of range", wanted);
            else
                Config = Config.WithOption(rule.Id, option, number);
        }

        private void ReadSuppressions(JsonPiece list)
        {
            if (list.Kind != JsonTokenType.StartArray)
            {
                Add(ProblemIds.WrongType, list, "/suppressions", $"it is {list.KindName}", "write a list [ ... ]");
                return;
            }
            for (int i = 0; i < list.Items.Count; i++)
            {
                ShapeReader reader = new(utf8);
                if (reader.Read(list.Items[i], FormulaShapes.Suppression, FilePointer.Root.Member("suppressions").Item(i)) is { } item && SuppressionBinder.Bind(item) is { } suppression)
                {
                    Config = Config.WithSuppression(suppression);
                    if (!Array.Exists(rules, r => r.Id == suppression.RuleId || r.FormerIds.Contains(suppression.RuleId, StringComparer.Ordinal)))
                        Add(ProblemIds.UnknownChoice, list.Items[i], FormattableString.Invariant($"/suppressions/{i}/rule"), $"there is no rule \"{suppression.RuleId}\"", null);
                }
                Problems.AddRange(reader.Problems);
            }
        }

        private void UnknownRule(string name, (int Start, int Length) at, string pointer)
        {
            ValueList<string> near = Nearest.To(name, rules.Select(r => r.Id).Concat(Enum.GetNames<RuleCategory>().Select(JsonNamingPolicy.CamelCase.ConvertName)));
            Add(ProblemIds.UnknownMember, at.Start, at.Length, pointer, $"there is no rule or category \"{ShapeReader.Short(name)}\"", near.Count == 0 ? null : "nearest: " + string.Join(", ", near));
        }
    }
}
