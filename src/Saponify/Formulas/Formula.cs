using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// What the maker decides: fats, alkali, liquids, additives. It says nothing of what comes out; ask <c>formula.Plan()</c>.
/// Any formula can be made, bad ones too: what is wrong with it is for the plan's obstacles and the analyzer.
/// Immutable, thread-safe; equality by content; change it with <c>with</c>.
/// </summary>
public sealed record Formula
{
    private static readonly Limits s_scaleLimits = new(1e-6, 1e6);

    /// <summary>Starts a formula; fats, alkali and liquids are required.</summary>
    /// <param name="name">Name for people; not blank.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public Formula(string name) => Name = name;

    internal double ListedGrams { get; private init; }

    internal double RecipeHydroxide { get; private init; }

    internal double LateHydroxide { get; private init; }

    /// <summary>True when a listed fat has no usable saponification value.</summary>
    internal bool LacksSaponification { get; private init; }

    /// <summary>Name for people.</summary>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public string Name { get; init => field = Guard.Text(value, "The name of a formula"); }

    /// <summary>The listed fats, recipe and late. Lines with the same id get -2, -3.</summary>
    /// <exception cref="ArgumentException">The list holds a null.</exception>
    public required ValueList<FatPortion> Fats
    {
        get;
        init
        {
            field = LineId.MakeUnique(value, "The fats");
            (double grams, double recipe, double late, bool lacks) = (0, 0, 0, false);
            foreach (FatPortion portion in field)
            {
                grams += portion.Grams;
                lacks |= portion.Fat.Saponification is null;
                if (portion.IsLate)
                    late += portion.Hydroxide;
                else
                    recipe += portion.Hydroxide;
            }
            (ListedGrams, RecipeHydroxide, LateHydroxide, LacksSaponification) = (grams, recipe, late, lacks);
        }
    }

    /// <summary>How the alkali is decided.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required AlkaliPlan Alkali { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); }

    /// <summary>How much water, what the alkali is dissolved in, what is held back.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required LiquidPlan Liquids { get; init => field = value ?? throw new ArgumentNullException(nameof(value)); }

    /// <summary>Everything else. Lines with the same id get -2, -3.</summary>
    /// <exception cref="ArgumentException">The list holds a null.</exception>
    public ValueList<AdditivePortion> Additives { get; init => field = LineId.MakeUnique(value, "The additives"); }

    /// <summary>Findings that are known and accepted, each with its reason.</summary>
    public ValueList<Suppression> Suppressions { get; init; }

    /// <summary>Mass of the listed fats, recipe and late: the base of percent doses.</summary>
    public Mass ListedFats => Mass.FromGrams(ListedGrams);

    /// <summary>The same formula with every mass and volume times a factor; shares stay.</summary>
    /// <param name="factor">From 1e-6 to 1e6.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or a mass that would pass 1e9 g.</exception>
    public Formula ScaledBy(double factor)
    {
        Guard.InRange(factor, s_scaleLimits, "A scale factor", "times");
        return this with
        {
            Fats = [.. Fats.Select(f => f.Times(factor))],
            Alkali = Alkali.Times(factor),
            Liquids = Liquids.Times(factor),
            Additives = [.. Additives.Select(a => a.Times(factor))],
        };
    }

    /// <summary>The same formula for so much listed fat; everything else scales with it.</summary>
    /// <param name="listedFats">Above 0, up to 1e9 g.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or more than a millionfold change.</exception>
    /// <exception cref="InvalidOperationException">The formula has no fat to scale by.</exception>
    public Formula ScaledTo(Mass listedFats)
    {
        return ListedGrams > 0
            ? ScaledBy(FactorTo(listedFats, ListedGrams, "The mass of the fats", nameof(listedFats)))
            : throw new InvalidOperationException("A formula without fat has no mass to scale by.");
    }

    /// <summary>The factor that leads from one mass to another; a millionfold change at most.</summary>
    internal static double FactorTo(Mass mass, double from, string what, string name) =>
        Guard.InRange(Stored.ToGrams(mass), from * s_scaleLimits.Low, Math.Min(Guard.LargestGrams, from * s_scaleLimits.High), what, "g", name) / from;

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
