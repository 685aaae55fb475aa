using System.Buffers;
using System.Text.Json;
using Microsoft.AspNetCore.Mvc;
using Saponify;
using Saponify.Analysis;

namespace WebEndpoint;

/// <summary>From the body of a request to an answer.</summary>
internal static class Plans
{
    internal static async Task<IResult> AnswerAsync(HttpRequest request, CancellationToken cancellation)
    {
        if (!request.HasJsonContentType())
            return Results.Problem(statusCode: StatusCodes.Status415UnsupportedMediaType, detail: "Send a formula file as application/json.");

        using MemoryStream body = new();
        await request.Body.CopyToAsync(body, cancellation);
        FormulaFile file = FormulaFile.Read(body.GetBuffer().AsSpan(0, (int)body.Length), Pantry.Reference);
        if (file.Formula is null)
            return Results.Problem(Unreadable(file));

        AnalysisReport report = FormulaAnalyzer.Default.Analyze(file, cancellation: cancellation);
        return Results.Bytes(Answer(report), "application/json");
    }

    /// <summary>Every fault at once, each with its place: the person who wrote the file mends them in one go.</summary>
    private static ProblemDetails Unreadable(FormulaFile file) => new()
    {
        Status = StatusCodes.Status422UnprocessableEntity,
        Title = "The formula could not be read.",
        Detail = string.Join("\n", file.Problems),
        Extensions =
        {
            ["faults"] = file.Problems.Select(fault => new Dictionary<string, object?>
            {
                ["id"] = fault.Id,
                ["pointer"] = fault.Pointer,
                ["line"] = fault.Place.Line,
                ["column"] = fault.Place.Column,
                ["text"] = fault.Text,
                ["expected"] = fault.Expected,
            }).ToArray(),
        },
    };

    private static byte[] Answer(AnalysisReport report)
    {
        ArrayBufferWriter<byte> buffer = new(4096);
        using (Utf8JsonWriter json = new(buffer))
        {
            json.WriteStartObject();
            json.WriteBoolean("safeToWeigh", report.IsSafeToWeigh);
            json.WritePropertyName("plan");
            json.WriteRawValue(PlanJson.Write(report.Plan));
            json.WritePropertyName("report");
            json.WriteRawValue(ReportJson.Write(report));
            json.WriteEndObject();
        }
        return buffer.WrittenSpan.ToArray();
    }
}
