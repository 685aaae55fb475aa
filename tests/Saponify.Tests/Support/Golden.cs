namespace Saponify.Tests.Support;

/// <summary>Documents compared with the ones in the repository. SAPONIFY_APPROVE=1 writes them anew; the diff is reviewed.</summary>
public static class Golden
{
    public static void Matches(string actual, params string[] path) => MatchesFile(actual, ["tests", "Saponify.Tests", "Golden", .. path]);

    /// <summary>The same for a generated document anywhere in the repository.</summary>
    public static void MatchesFile(string actual, params string[] path)
    {
        string file = Repository.Path(path);
        if (Environment.GetEnvironmentVariable("SAPONIFY_APPROVE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, actual);
        }
        Assert.True(File.Exists(file), $"{file} is missing; make it with SAPONIFY_APPROVE=1 and review it.");
        Assert.Equal(File.ReadAllText(file).ReplaceLineEndings("\n"), actual);
    }
}
