using System.Globalization;
using System.Text;

namespace Saponify.Cli;

/// <summary>Lines that go (-) and lines that come (+), each with its number.</summary>
internal static class LineDifference
{
    internal static string Of(string before, string after)
    {
        string[] old = before.Split('\n'), now = after.Split('\n');
        int start = 0, end = 0;
        while (start < old.Length && start < now.Length && old[start] == now[start])
            start++;
        while (end < old.Length - start && end < now.Length - start && old[^(end + 1)] == now[^(end + 1)])
            end++;
        int rows = old.Length - start - end, columns = now.Length - start - end;
        // length of the longest common run of lines from here on; a formula has some dozens of lines
        int[,] common = new int[rows + 1, columns + 1];
        for (int i = rows - 1; i >= 0; i--)
        {
            for (int j = columns - 1; j >= 0; j--)
                common[i, j] = old[start + i] == now[start + j] ? common[i + 1, j + 1] + 1 : Math.Max(common[i + 1, j], common[i, j + 1]);
        }
        StringBuilder text = new();
        for (int i = 0, j = 0; i < rows || j < columns;)
        {
            if (i < rows && j < columns && old[start + i] == now[start + j])
                (i, j) = (i + 1, j + 1);
            else if (i < rows && (j == columns || common[i + 1, j] >= common[i, j + 1]))
                Line(text, start + ++i, '-', old[start + i - 1]);
            else
                Line(text, start + ++j, '+', now[start + j - 1]);
        }
        return text.ToString();
    }

    private static void Line(StringBuilder text, int number, char sign, string line) =>
        text.Append(number.ToString(CultureInfo.InvariantCulture).PadLeft(6)).Append(' ').Append(sign).Append(' ').Append(line.TrimEnd('\r')).Append('\n');
}
