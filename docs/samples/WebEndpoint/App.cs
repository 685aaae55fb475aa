using Saponify;

namespace WebEndpoint;

/// <summary>A service with one address: a formula file goes in by POST /plans, its plan and what the analyzer found come out.</summary>
public static class App
{
    /// <summary>The service, not yet started.</summary>
    public static WebApplication Create(string[] args)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(args);
        // the reader refuses more anyway; the server need not take it in first
        builder.WebHost.ConfigureKestrel(server => server.Limits.MaxRequestBodySize = FormulaFile.LargestBytes);
        builder.Services.AddProblemDetails();
        WebApplication app = builder.Build();
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            StatusCodeSelector = exception => exception is BadHttpRequestException bad ? bad.StatusCode : StatusCodes.Status500InternalServerError,
        });
        app.UseStatusCodePages();
        app.MapPost("/plans", Plans.AnswerAsync);
        return app;
    }
}
