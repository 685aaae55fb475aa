using System.Buffers;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Saponify.Analysis;
using Saponify.Internals;

namespace Saponify;

/// <summary>Reports as JSON, for programs.</summary>
public static class ReportJson
{
    private static readonly JsonWriterOptions s_options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes a report: <c>"format": "saponify-report/1"</c>, UTF-8, LF.</summary>
    /// <param name="report">The report.</param>
    /// <exception cref="ArgumentNullException"><paramref name="report"/> is null.</exception>
    public static byte[] Write(AnalysisReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArrayBufferWriter<byte> buffer = new(2048);
        using (Utf8JsonWriter json = new(buffer, s_options))
        {
            json.WriteStartObject();
            json.WriteString("format", "saponify-report/1");
            json.WriteString("writtenBy", LibraryVersion.Name);
            json.WriteString("name", report.Formula.Name);
            json.WriteBoolean("safeToWeigh", report.IsSafeToWeigh);
            List(json, "diagnostics", report.Diagnostics);
            List(json, "suppressed", report.Suppressed);
            json.WriteStartArray("outcomes");
            foreach (RuleOutcome outcome in report.Outcomes)
            {
                json.WriteStartObject();
                json.WriteString("id", outcome.Rule.Id);
                json.WriteString("status", JsonNamingPolicy.CamelCase.ConvertName(outcome.Status.ToString()));
                if (outcome.Reason is not null)
                    json.WriteString("reason", outcome.Reason);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    private static void List(Utf8JsonWriter json, string name, IReadOnlyList<Diagnostic> diagnostics)
    {
        json.WriteStartArray(name);
        foreach (Diagnostic diagnostic in diagnostics)
            Write(json, diagnostic);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Diagnostic diagnostic)
    {
        json.WriteStartObject();
        json.WriteString("id", diagnostic.Id);
        json.WriteString("severity", Diagnostic.Word(diagnostic.Severity));
        json.WriteString("path", diagnostic.Path.ToString());
        json.WriteString("pointer", diagnostic.Path.ToJsonPointer());
        if (diagnostic.Place is { } place)
        {
            json.WriteNumber("line", place.Line);
            json.WriteNumber("column", place.Column);
        }
        json.WriteString("message", diagnostic.ToMessage(CultureInfo.InvariantCulture));
        json.WriteString("harm", diagnostic.Rule.Harm);
        json.WriteString("messageName", diagnostic.Template.Name);
        json.WriteBoolean("restsOnMemory", diagnostic.RestsOnMemory);
        json.WriteStartObject("args");
        foreach (Arg arg in diagnostic.Args)
        {
            if (arg.Text is not null)
            {
                json.WriteString(arg.Name, arg.Text);
                continue;
            }
            json.WriteStartObject(arg.Name);
            if (double.IsFinite(arg.Number))
                json.WriteNumber("value", arg.Number);
            else
                json.WriteNull("value");
            json.WriteString("unit", arg.Unit);
            json.WriteEndObject();
        }
        json.WriteEndObject();
        json.WriteStartArray("fixes");
        foreach (Fix fix in diagnostic.Fixes)
        {
            json.WriteStartObject();
            json.WriteString("key", fix.Key);
            json.WriteString("title", fix.Title);
            json.WriteBoolean("keepsProduct", fix.Effect == FixEffect.KeepsProduct);
            json.WriteStartArray("changes");
            foreach (Change change in fix.Changes)
            {
                json.WriteStartObject();
                json.WriteString("pointer", change.Path.ToJsonPointer());
                json.WriteString("before", change.Before);
                json.WriteString("after", change.After);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
        if (diagnostic.Suppression is { } suppression)
            json.WriteString("accepted", suppression.Reason);
        json.WriteEndObject();
    }
}
