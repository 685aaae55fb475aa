namespace Saponify;

/// <summary>Something that was not given, so that a part of the plan could not be computed. Immutable; equality by content.</summary>
public sealed record ProcessQuestion
{
    internal ProcessQuestion(ProcessInput input, FormulaPath path, string text) => (Input, Path, Text) = (input, path, text);

    /// <summary>What is asked for.</summary>
    public ProcessInput Input { get; }

    /// <summary>Where the formula could state it; the root where it is no matter of the formula.</summary>
    public FormulaPath Path { get; }

    /// <summary>What is asked for and what it is needed for; in English, invariant.</summary>
    public string Text { get; }

    /// <summary>The text.</summary>
    public override string ToString() => Text;
}
