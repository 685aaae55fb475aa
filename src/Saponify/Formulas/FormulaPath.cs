using System.Globalization;
using System.Text;

namespace Saponify;

/// <summary>
/// A place in a formula or its circumstances (<c>setup.mould</c>), in two spellings: <c>fats[olive-oil].mass</c> survives reordering, <c>/fats/1/mass</c> follows the document.
/// Immutable; equality by content; ordered as diagnostics are: list steps by number, names ordinally.
/// </summary>
public sealed class FormulaPath : IEquatable<FormulaPath>, IComparable<FormulaPath>
{
    private readonly FormulaPath? _parent;
    private readonly string _name;
    private readonly int _index;

    private FormulaPath(FormulaPath? parent, string name, int index) => (_parent, _name, _index) = (parent, name, index);

    /// <summary>The place above; null for the formula itself.</summary>
    public FormulaPath? Parent => _parent;

    /// <summary>The formula itself.</summary>
    public static FormulaPath Root { get; } = new(null, "", -1);

    internal static FormulaPath Fats { get; } = Root.Member("fats");

    internal static FormulaPath Alkali { get; } = Root.Member("alkali");

    internal static FormulaPath Liquids { get; } = Root.Member("liquids");

    internal static FormulaPath LyeLiquid { get; } = Liquids.Member("lyeLiquid");

    internal static FormulaPath HeldBack { get; } = Liquids.Member("heldBack");

    internal static FormulaPath Additives { get; } = Root.Member("additives");

    /// <summary>The circumstances, by the names of the formula file, wherever they come from.</summary>
    internal static FormulaPath Setup { get; } = Root.Member("setup");

    /// <summary>A member of this place.</summary>
    /// <param name="name">Its name in the formula file, for example <c>fats</c>.</param>
    /// <exception cref="ArgumentException">The name is null or empty.</exception>
    public FormulaPath Member(string name)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        return new(this, name, -1);
    }

    /// <summary>An item of the list at this place.</summary>
    /// <param name="index">Its place in the list, from 0.</param>
    /// <param name="line">The line's own id.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative index.</exception>
    /// <exception cref="ArgumentException">The id is null or empty.</exception>
    public FormulaPath Item(int index, string line)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentException.ThrowIfNullOrEmpty(line);
        return new(this, line, index);
    }

    /// <summary>The place as a JSON pointer (RFC 6901): <c>/fats/1/mass</c>; empty for the formula itself.</summary>
    public string ToJsonPointer()
    {
        StringBuilder text = new();
        foreach (FormulaPath step in Steps())
        {
            text.Append('/');
            if (step._index >= 0)
                text.Append(step._index.ToString(CultureInfo.InvariantCulture));
            else
                text.Append(step._name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
        }
        return text.ToString();
    }

    /// <summary>The place by names: <c>fats[olive-oil].mass</c>; empty for the formula itself.</summary>
    public override string ToString()
    {
        StringBuilder text = new();
        foreach (FormulaPath step in Steps())
        {
            if (step._index >= 0)
                text.Append('[').Append(step._name).Append(']');
            else
                text.Append(text.Length == 0 ? "" : ".").Append(step._name);
        }
        return text.ToString();
    }

    /// <inheritdoc/>
    public bool Equals(FormulaPath? other) =>
        other is not null && (ReferenceEquals(this, other)
            || (_index == other._index && string.Equals(_name, other._name, StringComparison.Ordinal) && Equals(_parent, other._parent)));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FormulaPath);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_parent, _name, _index);

    /// <inheritdoc/>
    public int CompareTo(FormulaPath? other)
    {
        if (other is null)
            return 1;
        FormulaPath[] mine = Steps(), theirs = other.Steps();
        for (int i = 0; i < Math.Min(mine.Length, theirs.Length); i++)
        {
            int order = mine[i]._index.CompareTo(theirs[i]._index);
            if (order == 0)
                order = string.CompareOrdinal(mine[i]._name, theirs[i]._name);
            if (order != 0)
                return order;
        }
        return mine.Length.CompareTo(theirs.Length);
    }

    private FormulaPath[] Steps()
    {
        int depth = 0;
        for (FormulaPath at = this; at._parent is not null; at = at._parent)
            depth++;
        var steps = new FormulaPath[depth];
        for (FormulaPath at = this; at._parent is not null; at = at._parent)
            steps[--depth] = at;
        return steps;
    }
}
