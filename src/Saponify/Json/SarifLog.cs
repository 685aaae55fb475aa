using System.Buffers;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Saponify.Analysis;
using Saponify.Internals;

namespace Saponify;

/// <summary>
/// Reports as SARIF 2.1.0, so that editors and build servers pick them up. No clock, no path of a machine, no random id: equal input gives equal bytes.
/// Source of the format: OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0; sections are named beside what they ask for.
/// </summary>
public static class SarifLog
{
    private const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private static readonly JsonWriterOptions s_options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One report as a SARIF log of one run, UTF-8, LF.</summary>
    /// <param name="report">The report.</param>
    /// <param name="artifact">Name of the formula file, relative, with slashes; null when the formula came from no file.</param>
    /// <exception cref="ArgumentNullException"><paramref name="report"/> is null.</exception>
    public static byte[] Write(AnalysisReport report, string? artifact = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        return Write([(report, artifact)]);
    }

    /// <summary>Several reports of one analyzer as a SARIF log of one run, UTF-8, LF.</summary>
    /// <param name="reports">The reports with the names of their files.</param>
    /// <exception cref="ArgumentNullException">A null argument or report.</exception>
    public static byte[] Write(IEnumerable<(AnalysisReport Report, string? Artifact)> reports)
    {
        ArgumentNullException.ThrowIfNull(reports);
        (AnalysisReport Report, string? Artifact)[] all = [.. reports];
        ArrayBufferWriter<byte> buffer = new(4096);
        using (Utf8JsonWriter json = new(buffer, s_options))
            WriteLog(json, all);
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    private static void WriteLog(Utf8JsonWriter json, (AnalysisReport Report, string? Artifact)[] reports)
    {
        RuleDescriptor[] rules =
        [
            .. reports.SelectMany(r => r.Report.Outcomes.Select(o => o.Rule)).Concat(reports.SelectMany(r => r.Report.Diagnostics.Concat(r.Report.Suppressed)).Select(d => d.Rule))
                .DistinctBy(r => r.Id, StringComparer.Ordinal).OrderBy(r => r.Id, StringComparer.Ordinal),
        ];
        json.WriteStartObject();
        json.WriteString("$schema", Schema);
        json.WriteString("version", "2.1.0");
        json.WriteStartArray("runs");
        json.WriteStartObject();
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "Saponify");
        json.WriteString("semanticVersion", LibraryVersion.Name.Split(' ')[^1] + ".0");
        json.WriteStartArray("rules");
        foreach (RuleDescriptor rule in rules)
            WriteRule(json, rule);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
        WriteInvocation(json, reports);
        json.WriteString("columnKind", "utf16CodeUnits");                                     // 3.14.17
        json.WriteStartArray("results");
        foreach ((AnalysisReport report, string? artifact) in reports)
        {
            foreach (Diagnostic diagnostic in report.Diagnostics.Concat(report.Suppressed))
            {
                if (diagnostic.Id != EngineRules.RuleFailed.Id)                               // 3.20.21: a failed rule is a notification, not a result
                    WriteResult(json, diagnostic, artifact, Array.FindIndex(rules, r => r.Id == diagnostic.Id));
            }
        }
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>3.49: named arguments become numbers, braces of the text are doubled.</summary>
    private static void WriteRule(Utf8JsonWriter json, RuleDescriptor rule)
    {
        json.WriteStartObject();
        json.WriteString("id", rule.Id);
        json.WriteString("name", rule.Name);
        if (rule.FormerIds.Count > 0)
        {
            json.WriteStartArray("deprecatedIds");
            foreach (string id in rule.FormerIds)
                json.WriteStringValue(id);
            json.WriteEndArray();
        }
        Message(json, "shortDescription", rule.Title);
        Message(json, "fullDescription", rule.Harm);
        json.WriteStartObject("messageStrings");
        foreach (MessageTemplate message in rule.Messages)
            Message(json, message.Name, Numbered(message.Format));
        json.WriteEndObject();
        json.WriteStartObject("defaultConfiguration");
        json.WriteBoolean("enabled", rule.IsOnByDefault);
        json.WriteString("level", Level(rule.DefaultSeverity));
        json.WriteEndObject();
        json.WriteStartObject("properties");
        json.WriteString("category", JsonNamingPolicy.CamelCase.ConvertName(rule.Category.ToString()));
        if (rule.Floor > Severity.Hidden)
            json.WriteString("floor", Level(rule.Floor));
        json.WriteStartArray("sources");
        foreach (string source in rule.Sources)
            json.WriteStringValue(source);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteInvocation(Utf8JsonWriter json, (AnalysisReport Report, string? Artifact)[] reports)
    {
        Diagnostic[] failed = [.. reports.SelectMany(r => r.Report.Diagnostics).Where(d => d.Id == EngineRules.RuleFailed.Id)];
        json.WriteStartArray("invocations");
        json.WriteStartObject();
        json.WriteBoolean("executionSuccessful", failed.Length == 0);                         // 3.20.14
        if (failed.Length > 0)
        {
            json.WriteStartArray("toolExecutionNotifications");
            foreach (Diagnostic diagnostic in failed)
            {
                json.WriteStartObject();
                json.WriteString("level", "error");
                Message(json, "message", diagnostic.ToMessage(CultureInfo.InvariantCulture));
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteResult(Utf8JsonWriter json, Diagnostic diagnostic, string? artifact, int ruleIndex)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", diagnostic.Id);
        json.WriteNumber("ruleIndex", ruleIndex);
        bool fails = diagnostic.Severity > Severity.Hidden && !diagnostic.RestsOnMemory;
        // 3.27.9: a verdict that rests on figures from memory asks for a review; level is none unless the kind is fail (3.27.10)
        json.WriteString("kind", diagnostic.Severity == Severity.Hidden ? "informational" : diagnostic.RestsOnMemory ? "review" : "fail");
        json.WriteString("level", fails ? Level(diagnostic.Severity) : "none");
        json.WriteStartObject("message");
        json.WriteString("text", Sentence(diagnostic.ToMessage(CultureInfo.InvariantCulture)));
        json.WriteEndObject();
        WriteLocations(json, diagnostic, artifact);
        if (diagnostic.Related.Count > 0)
        {
            json.WriteStartArray("relatedLocations");
            for (int i = 0; i < diagnostic.Related.Count; i++)
            {
                json.WriteStartObject();
                json.WriteNumber("id", i);
                Logical(json, diagnostic.Related[i]);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        json.WriteStartObject("partialFingerprints");                                         // 3.27.17
        json.WriteString("saponifyFinding/v1", diagnostic.Fingerprint);
        json.WriteEndObject();
        json.WriteStartArray("suppressions");                                                 // 3.27.23: on all results or on none
        if (diagnostic.Suppression is { } suppression)
        {
            json.WriteStartObject();
            json.WriteString("kind", "inSource");
            json.WriteString("status", "accepted");
            json.WriteString("justification", suppression.Reason);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartObject("properties");
        json.WriteString("severity", Diagnostic.Word(diagnostic.Severity));
        json.WriteString("messageName", diagnostic.Template.Name);
        json.WriteStartArray("fixes");
        foreach (Fix fix in diagnostic.Fixes)
        {
            json.WriteStartObject();
            json.WriteString("key", fix.Key);
            json.WriteString("title", fix.Title);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteLocations(Utf8JsonWriter json, Diagnostic diagnostic, string? artifact)
    {
        json.WriteStartArray("locations");
        json.WriteStartObject();
        if (artifact is not null)
        {
            json.WriteStartObject("physicalLocation");
            json.WriteStartObject("artifactLocation");
            json.WriteString("uri", string.Join('/', artifact.Replace('\\', '/').Split('/').Select(Uri.EscapeDataString)));
            json.WriteEndObject();
            if (diagnostic.Place is { } place)
            {
                json.WriteStartObject("region");
                json.WriteNumber("startLine", place.Line);
                json.WriteNumber("startColumn", place.Column);
                json.WriteNumber("byteOffset", place.Offset);
                json.WriteNumber("byteLength", place.Length);
                json.WriteEndObject();
            }
            json.WriteEndObject();
        }
        Logical(json, diagnostic.Path);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    /// <summary>3.33: the JSON pointer is the fully qualified name, the stable path the name.</summary>
    private static void Logical(Utf8JsonWriter json, FormulaPath path)
    {
        json.WriteStartArray("logicalLocations");
        json.WriteStartObject();
        json.WriteString("name", path.ToString());
        json.WriteString("fullyQualifiedName", path.ToJsonPointer());
        json.WriteString("kind", path.Equals(FormulaPath.Root) ? "object" : "property");
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void Message(Utf8JsonWriter json, string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", Sentence(text));
        json.WriteEndObject();
    }

    /// <summary>SARIF asks for whole sentences (3.11.2 and the validator's rule SARIF2001); our messages are clauses.</summary>
    private static string Sentence(string text) => text.EndsWith('.') || text.EndsWith('?') ? text : text + ".";

    private static string Numbered(string format)
    {
        System.Text.StringBuilder text = new();
        List<string> names = [];
        for (int at = 0; at < format.Length; at++)
        {
            int close = format[at] == '{' ? format.IndexOf('}', at) : -1;
            if (close < 0)
            {
                text.Append(format[at] is '{' or '}' ? new string(format[at], 2) : format[at].ToString());
                continue;
            }
            string name = format[(at + 1)..close];
            if (!names.Contains(name))
                names.Add(name);
            text.Append('{').Append(names.IndexOf(name).ToString(CultureInfo.InvariantCulture)).Append('}');
            at = close;
        }
        return text.ToString();
    }

    private static string Level(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        Severity.Info => "note",
        _ => "none",
    };
}
