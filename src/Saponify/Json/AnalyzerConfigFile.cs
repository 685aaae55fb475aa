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
        byte[] copy = utf8.Length > FormulaFile.LargestBytes ? [] : utf8.ToArray();
        if (JsonPiece.Open(copy, utf8.Length, out Problem? fault) is not { } root)
            return new(AnalyzerConfig.Default, [fault!]);
        Reader reader = new(copy, [.. (rules ?? FormulaAnalyzer.BuiltInRules).Select(r => r.Descriptor)]);
        reader.Read(root);
        return new(reader.Config, reader.Found.ToProblems());
    }

    private sealed class Reader(byte[] utf8, RuleDescriptor[] rules)
    {
        private static readonly string[] s_members = ["preset", "severity", "options", "suppressions"];

        private readonly ShapeReader _shapes = new(utf8);

        internal Findings Found => _shapes.Problems;

        internal AnalyzerConfig Config { get; private set; } = AnalyzerConfig.Default;

        internal void Read(JsonPiece root)
        {
            if (root.Kind != JsonTokenType.StartObject)
            {
                Add(ProblemIds.WrongType, root, $"a configuration is {root.KindName}", "write an object { ... }");
                return;
            }
            HashSet<string> seen = new(StringComparer.Ordinal);
            // the preset comes first, since it makes a new configuration
            foreach (JsonPiece value in root.Items.OrderBy(m => m.Name == "preset" ? 0 : 1))
            {
                if (!seen.Add(value.Name!))
                    AddAtName(ProblemIds.DuplicateMember, value, $"\"{ShapeReader.Short(value.Name!)}\" stands twice", "keep one of them");
                else if (value.Name == "preset")
                    ReadPreset(value);
                else if (value.Name == "severity")
                    EachMember(value, ReadSeverity);
                else if (value.Name == "options")
                    EachMember(value, ReadOption);
                else if (value.Name == "suppressions")
                    ReadSuppressions(value);
                else
                    AddAtName(ProblemIds.UnknownMember, value, $"there is no member \"{ShapeReader.Short(value.Name!)}\" here", "known here: " + string.Join(", ", s_members));
            }
        }

        private void Add(string id, JsonPiece piece, string text, string? expected) => _shapes.Report(id, piece, text, expected);

        private void AddAtName(string id, JsonPiece piece, string text, string? expected) => Found.Add(id, piece.NameStart, piece.NameEnd - piece.NameStart, piece.Pointer, text, expected);

        private void ReadPreset(JsonPiece value)
        {
            if (value.Kind == JsonTokenType.String && Enum.GetNames<Preset>().FirstOrDefault(n => JsonNamingPolicy.CamelCase.ConvertName(n) == value.Text) is { } name)
                Config = AnalyzerConfig.Of(Enum.Parse<Preset>(name));
            else
                Add(ProblemIds.UnknownChoice, value, "there is no such preset", "write one of: " + string.Join(", ", Enum.GetNames<Preset>().Select(n => $"\"{JsonNamingPolicy.CamelCase.ConvertName(n)}\"")));
        }

        private void EachMember(JsonPiece piece, Action<JsonPiece> read)
        {
            if (piece.Kind == JsonTokenType.StartObject)
                piece.Items.ForEach(read);
            else
                Add(ProblemIds.WrongType, piece, $"it is {piece.KindName}", "write an object { ... }");
        }

        private void ReadSeverity(JsonPiece value)
        {
            string name = value.Name!;
            int index = value.Kind == JsonTokenType.String ? Array.FindIndex(s_severities, s => s.Name == value.Text) : -1;
            if (index < 0)
            {
                Add(ProblemIds.UnknownChoice, value, "there is no such severity", "write one of: " + string.Join(", ", s_severities.Select(s => $"\"{s.Name}\"")));
                return;
            }
            Severity? severity = s_severities[index].Value;
            if (Array.Find(rules, r => r.Id == name || r.FormerIds.Contains(name, StringComparer.Ordinal)) is { } rule)
            {
                Config = Config.WithSeverity(rule.Id, severity);
                if (rule.Floor > Severity.Hidden && !(severity >= rule.Floor))
                    Add(ProblemIds.Conflict, value, $"{rule.Id} is a safety rule and stays at {Diagnostic.Word(rule.Floor)}", "accept a finding with a reason instead");
            }
            else if (Enum.GetNames<RuleCategory>().FirstOrDefault(n => JsonNamingPolicy.CamelCase.ConvertName(n) == name) is { } category)
            {
                Config = Config.WithSeverity(Enum.Parse<RuleCategory>(category), severity);
            }
            else
            {
                UnknownRule(value, name);
            }
        }

        private void ReadOption(JsonPiece value)
        {
            string name = value.Name!;
            string[] parts = name.Split('.');
            RuleDescriptor? rule = Array.Find(rules, r => r.Id == parts[0]);
            if (rule is null)
            {
                UnknownRule(value, parts[0]);
                return;
            }
            RuleOption? option = parts.Length == 2 ? rule.Options.FirstOrDefault(o => o.Key == parts[1]) : null;
            if (option is null)
            {
                AddAtName(ProblemIds.UnknownMember, value, $"{rule.Id} has no option \"{ShapeReader.Short(name)}\"",
                    rule.Options.Count == 0 ? "it has none" : "known: " + string.Join(", ", rule.Options.Select(o => $"\"{rule.Id}.{o.Key}\"")));
                return;
            }
            string wanted = $"write a number with its unit from {Text.Exact(option.Least)} to {Text.Exact(option.Most)}, such as \"{Text.Exact(option.Default)} {option.Unit}\"";
            if (value.Kind != JsonTokenType.String || !AmountReader.TryNumber(value.Text, out double number, out ReadOnlySpan<char> unit, out _) || !unit.SequenceEqual(option.Unit))
                Add(ProblemIds.WrongAmount, value, $"\"{name}\" is no number in {option.Unit}", wanted);
            else if (!(number >= option.Least && number <= option.Most))
                Add(ProblemIds.OutOfRange, value, $"\"{name}\" is out of range", wanted);
            else
                Config = Config.WithOption(rule.Id, option, number);
        }

        private void ReadSuppressions(JsonPiece list)
        {
            if (list.Kind != JsonTokenType.StartArray)
            {
                Add(ProblemIds.WrongType, list, $"it is {list.KindName}", "write a list [ ... ]");
                return;
            }
            foreach (JsonPiece item in list.Items)
            {
                if (_shapes.Read(item, FormulaShapes.Suppression) is not { } bound || SuppressionBinder.Bind(bound) is not { } suppression)
                    continue;
                Config = Config.WithSuppression(suppression);
                if (!Array.Exists(rules, r => r.Id == suppression.RuleId || r.FormerIds.Contains(suppression.RuleId, StringComparer.Ordinal)))
                    bound.Report(ProblemIds.UnknownChoice, FormulaShapes.SuppressionRule, $"there is no rule \"{ShapeReader.Short(suppression.RuleId)}\"");
            }
        }

        private void UnknownRule(JsonPiece value, string name)
        {
            ValueList<string> near = Nearest.To(name, rules.Select(r => r.Id).Concat(Enum.GetNames<RuleCategory>().Select(JsonNamingPolicy.CamelCase.ConvertName)));
            AddAtName(ProblemIds.UnknownMember, value, $"there is no rule or category \"{ShapeReader.Short(name)}\"", near.Count == 0 ? null : "nearest: " + string.Join(", ", near));
        }
    }
}
