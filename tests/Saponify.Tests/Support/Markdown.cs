namespace Saponify.Tests.Support;

/// <summary>Fenced blocks of a Markdown file.</summary>
public static class Markdown
{
    /// <summary>Each block with its language and the line it starts at.</summary>
    public static IEnumerable<(string Language, string Text, int Line)> Blocks(string markdown)
    {
        string[] lines = markdown.ReplaceLineEndings("\n").Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith("```", StringComparison.Ordinal))
                continue;
            int end = Array.IndexOf(lines, "```", i + 1);
            Assert.True(end > 0, $"the block at line {i + 1} has no end");
            yield return (lines[i][3..].Trim(), string.Join('\n', lines[(i + 1)..end]) + "\n", i + 1);
            i = end;
        }
    }

    /// <summary>The same document with the text of one block replaced.</summary>
    public static string Replace(string markdown, int block, string text)
    {
        string[] lines = markdown.ReplaceLineEndings("\n").Split('\n');
        int start = Blocks(markdown).ElementAt(block).Line;
        int end = Array.IndexOf(lines, "```", start);
        return string.Join('\n', [.. lines[..start], .. text.TrimEnd('\n').Split('\n'), .. lines[end..]]);
    }
}
