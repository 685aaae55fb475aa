using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Saponify.Tests.Support;
using WebEndpoint;

namespace Saponify.Samples;

/// <summary>The web sample over real HTTP, on a port of this machine.</summary>
public sealed class WebEndpointTests : IAsyncLifetime
{
    private readonly WebApplication _app = App.Create(["--urls", "http://127.0.0.1:0", "--Logging:LogLevel:Default=None"]);
    private readonly HttpClient _client = new();

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        await _app.StartAsync(Cancellation);
        _client.BaseAddress = new(_app.Urls.Single());
    }

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        await _app.DisposeAsync();
    }

    [Fact]
    public async Task GoodFormula_IsAnsweredWithThePlanAndTheReport()
    {
        byte[] formula = await File.ReadAllBytesAsync(Repository.Path("data", "examples", "goat-milk-frozen.json"), Cancellation);
        using HttpResponseMessage response = await PostAsync(formula);
        JsonElement answer = await response.Content.ReadFromJsonAsync<JsonElement>(Cancellation);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("application/json", response.Content.Headers.ContentType!.MediaType);
        BatchPlan plan = FormulaFile.Read(formula, Pantry.Reference).Formula!.Plan();
        Assert.Equal(plan.Alkalis[0].Mass.Grams, answer.GetProperty("plan").GetProperty("alkalis")[0].GetProperty("massGrams").GetDouble());
        Assert.Equal("saponify-report/1", answer.GetProperty("report").GetProperty("format").GetString());
    }

    [Fact]
    public async Task DangerousFormula_IsAnsweredAndNotCalledSafe()
    {
        using HttpResponseMessage response = await PostAsync(Encoding.UTF8.GetBytes(Formula(superfat: "-4 %")));
        JsonElement answer = await response.Content.ReadFromJsonAsync<JsonElement>(Cancellation);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.False(answer.GetProperty("safeToWeigh").GetBoolean());
        Assert.Contains(answer.GetProperty("report").GetProperty("diagnostics").EnumerateArray(), d => d.GetProperty("severity").GetString() == "error");
    }

    [Fact]
    public async Task UnreadableFormula_IsAnsweredWithEveryFaultInItsPlace()
    {
        using HttpResponseMessage response = await PostAsync(Encoding.UTF8.GetBytes(Formula(superfat: "5,5 %").Replace("olive-oil", "olve-oil", StringComparison.Ordinal)));
        JsonElement problem = await response.Content.ReadFromJsonAsync<JsonElement>(Cancellation);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
        JsonElement[] faults = [.. problem.GetProperty("faults").EnumerateArray()];
        Assert.Equal(["/fats/0/fat", "/alkali/superfat"], faults.Select(f => f.GetProperty("pointer").GetString()));
        Assert.All(faults, f => Assert.True(f.GetProperty("line").GetInt32() > 0 && f.GetProperty("column").GetInt32() > 0));
    }

    [Fact]
    public async Task TooLargeABody_IsRefusedWithProblemDetails()
    {
        using HttpResponseMessage response = await PostAsync(new byte[FormulaFile.LargestBytes + 1]);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task AnotherContentType_IsRefusedWithProblemDetails()
    {
        using StringContent text = new("a bar of soap, please", Encoding.UTF8, "text/plain");
        using HttpResponseMessage response = await _client.PostAsync(new Uri("/plans", UriKind.Relative), text, Cancellation);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
    }

    /// <summary>A client that hangs up in the middle of its request costs nothing: the next one is answered.</summary>
    [Fact]
    public async Task ClientThatHangsUp_LeavesTheServiceAnswering()
    {
        Uri address = new(_app.Urls.Single());
        using (TcpClient client = new())
        {
            await client.ConnectAsync(address.Host, address.Port, Cancellation);
            await client.GetStream().WriteAsync(Encoding.ASCII.GetBytes("POST /plans HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 5000\r\n\r\n{ \"format\""), Cancellation);
        }
        using HttpResponseMessage response = await PostAsync(Encoding.UTF8.GetBytes(Formula(superfat: "5 %")));
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    private static string Formula(string superfat) => $$"""
        {
          "format": "saponify-formula/1",
          "name": "Bar",
          "fats": [ { "fat": "olive-oil", "mass": "500 g" } ],
          "alkali": { "superfat": "{{superfat}}", "alkalis": [ { "alkali": "sodium-hydroxide", "purity": "98 %" } ] },
          "liquids": { "lyeConcentration": "30 %" }
        }
        """;

    private async Task<HttpResponseMessage> PostAsync(byte[] body)
    {
        using ByteArrayContent content = new(body);
        content.Headers.ContentType = new("application/json");
        return await _client.PostAsync(new Uri("/plans", UriKind.Relative), content, Cancellation);
    }
}
