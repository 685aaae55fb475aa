using System.Globalization;
using System.Runtime.InteropServices;
using UnitsNet;

namespace Saponify.Analysis;

/// <summary>An argument of a message: a number with its unit, or a text. Apps read the number without parsing the message. Equality by content.</summary>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Arg
{
    private Arg(string name, double number, string? text, string? unit)
    {
        ArgumentNullException.ThrowIfNull(name);
        Name = name;
        Number = number;
        Text = text;
        Unit = unit;
    }

    /// <summary>Name in the message.</summary>
    public string Name { get; }

    /// <summary>The number, in <see cref="Unit"/>; not a number for a text.</summary>
    public double Number { get; }

    /// <summary>The text; null for a number.</summary>
    public string? Text { get; }

    /// <summary>Unit of the number, for example <c>g</c> or <c>%</c>; null for a text or a bare number.</summary>
    public string? Unit { get; }

    /// <summary>A number with its unit.</summary>
    /// <param name="name">Name in the message.</param>
    /// <param name="value">The number; may be anything a computation gives.</param>
    /// <param name="unit">Its unit; null for a bare number.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public static Arg Of(string name, double value, string? unit) => new(name, value, null, unit);

    /// <summary>A text, for example the name of a material.</summary>
    /// <param name="name">Name in the message.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public static Arg Of(string name, string text) => new(name, double.NaN, text ?? throw new ArgumentNullException(nameof(text)), null);

    /// <summary>A mass, in grams.</summary>
    /// <param name="name">Name in the message.</param>
    /// <param name="mass">The mass.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public static Arg Of(string name, Mass mass) => new(name, mass.Grams, null, "g");

    /// <summary>A ratio, in per cent.</summary>
    /// <param name="name">Name in the message.</param>
    /// <param name="ratio">The ratio.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public static Arg Of(string name, Ratio ratio) => new(name, ratio.DecimalFractions * 100, null, "%");

    internal string ToText(IFormatProvider culture)
    {
        if (Text is not null)
            return Text;
        string number = Number == 0 || !double.IsFinite(Number)
            ? Number.ToString(culture)
            : Math.Round(Number, Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(Number))), 0, 12), MidpointRounding.AwayFromZero).ToString("0.############", culture);
        return Unit is null ? number : $"{number} {Unit}";
    }

    /// <summary>The argument as messages show it; invariant.</summary>
    public override string ToString() => $"{Name} = {ToText(CultureInfo.InvariantCulture)}";
}
