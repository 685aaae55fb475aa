using System.Runtime.CompilerServices;
using System.Text;

namespace Saponify.Tests.Support;

/// <summary>What code must not do, and the words in which it is refused: a document of calls and messages, so that somebody reads them all.</summary>
public sealed class Refusals
{
    private readonly StringBuilder _text = new();

    public Refusals Of(Func<object?> call, [CallerArgumentExpression(nameof(call))] string code = "")
    {
        Exception? fault = Record.Exception(call);
        Assert.True(fault is not null, $"{code} is not refused.");
        string message = fault.Message.Split('\n')[0].TrimEnd();          // the actual value follows on a line of its own
        _text.Append(code.AsSpan("() => ".Length)).Append("\n    ").Append(fault.GetType().Name).Append(": ").Append(message).Append("\n\n");
        return this;
    }

    public void Match(string name) => Golden.Matches(_text.ToString(), "refusals", name + ".txt");
}
