using System.Text;
using Saponify.Tests.Support;

namespace Saponify.Tests.Reference;

/// <summary>A strict reader of RFC 4180 in thirty lines, so that the tables are checked by something else than what loads them.</summary>
public static class CsvText
{
    /// <summary>The rows of a table under data/, each by column name.</summary>
    public static List<Dictionary<string, string>> Table(params string[] path)
    {
        List<string[]> rows = Rows(Repository.Read(["data", .. path]));
        return [.. rows.Skip(1).Select(row =>
        {
            Assert.True(row.Length == rows[0].Length, $"{path[^1]}: {string.Join(',', row)} has {row.Length} fields");
            return rows[0].Zip(row).ToDictionary(p => p.First, p => p.Second);
        })];
    }

    public static List<string[]> Rows(string csv)
    {
        List<string[]> rows = [];
        List<string> fields = [];
        for (int at = 0; at < csv.Length;)
        {
            (string field, at) = Field(csv, at);
            fields.Add(field);
            if (csv[at] == '\n')
            {
                rows.Add([.. fields]);
                fields.Clear();
            }
            at++;
        }
        Assert.Empty(fields);
        return rows;
    }

    private static (string Field, int End) Field(string csv, int at)
    {
        if (csv[at] != '"')
        {
            int end = csv.AsSpan(at).IndexOfAny(',', '\n');
            Assert.True(end >= 0, "the last line has no line break");
            string plain = csv.Substring(at, end);
            Assert.DoesNotContain('"', plain);
            return (plain, at + end);
        }
        StringBuilder quoted = new();
        for (at++; ; at++)
        {
            if (csv[at] != '"')
                quoted.Append(csv[at]);
            else if (csv[at + 1] == '"')
                quoted.Append(csv[++at]);
            else
                break;
        }
        Assert.True(csv[at + 1] is ',' or '\n', $"something follows a quote: {quoted}");
        return (quoted.ToString(), at + 1);
    }
}
