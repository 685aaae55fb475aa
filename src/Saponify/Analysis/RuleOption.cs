using Saponify.Internals;

namespace Saponify.Analysis;

/// <summary>A limit of a rule that a team may set: a number with key, unit, default and range. Immutable; equality by content.</summary>
public sealed record RuleOption
{
    /// <summary>Makes an option.</summary>
    /// <param name="key">Key in a configuration, for example <c>highest</c>; not blank.</param>
    /// <param name="unit">Its unit, for example <c>%</c>; not blank.</param>
    /// <param name="value">The default, inside the range.</param>
    /// <param name="least">Least value allowed.</param>
    /// <param name="most">Greatest value allowed.</param>
    /// <param name="help">One line of help; not blank.</param>
    /// <exception cref="ArgumentException">A blank text.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The default lies outside the range.</exception>
    public RuleOption(string key, string unit, double value, double least, double most, string help)
    {
        Key = Guard.Text(key, "The key of an option");
        Unit = Guard.Text(unit, "The unit of an option");
        Default = Guard.InRange(value, least, most, "The default of an option", unit);
        Least = least;
        Most = most;
        Help = Guard.Text(help, "The help of an option");
    }

    /// <summary>Key in a configuration.</summary>
    public string Key { get; }

    /// <summary>Unit of the number.</summary>
    public string Unit { get; }

    /// <summary>The value unless a configuration sets another.</summary>
    public double Default { get; }

    /// <summary>Least value allowed.</summary>
    public double Least { get; }

    /// <summary>Greatest value allowed.</summary>
    public double Most { get; }

    /// <summary>One line of help.</summary>
    public string Help { get; }
}
