using System.Diagnostics;

namespace Saponify.Tests.Support;

/// <summary>Runs a program and keeps what it prints.</summary>
public static class Shell
{
    public static (int Exit, string Output) Run(string folder, string program, params string[] arguments)
    {
        ProcessStartInfo start = new(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        // the test host's own settings must not leak into the build it starts
        foreach (string name in start.Environment.Keys.Where(k => k.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase) || k is "DOTNET_HOST_PATH" or "TESTINGPLATFORM_DOTNETTEST_EXECUTIONID").ToArray())
            start.Environment.Remove(name);
        start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
        start.Environment["DOTNET_NOLOGO"] = "1";
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), errors = process.StandardError.ReadToEndAsync();
        process.WaitForExit();
        return (process.ExitCode, output.Result + errors.Result);
    }

    public static string Succeed(string folder, string program, params string[] arguments)
    {
        (int exit, string output) = Run(folder, program, arguments);
        Assert.True(exit == 0, $"{program} {string.Join(' ', arguments)} ended with {exit}:\n{output}");
        return output;
    }
}
