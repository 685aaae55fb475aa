using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// The circumstances of a batch, which are not the formula: scale, date, product, exclusions, temperatures and vessel, mould and cut, cure and label.
/// A formula file states them in its <c>setup</c>. What is not given makes the rules that need it "not applicable". Immutable; equality by content.
/// </summary>
public sealed record BatchSetup
{
    internal static readonly Limits MouldLimits = new(1, 10_000);

    /// <summary>Nothing known.</summary>
    public static BatchSetup Unknown { get; } = new();

    /// <summary>The scale that is weighed on.</summary>
    public Scale? Scale { get; init; }

    /// <summary>The scale for the alkali, when it is another one.</summary>
    public Scale? AlkaliScale { get; init; }

    /// <summary>Today, for suppressions and certificates that expire. The library has no clock.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>What is to come out: a bar, or a soft soap. Null when not said.</summary>
    public ProductForm? Form { get; init; }

    /// <summary>What the customer or the label excludes: <c>animal</c> (vegan), allergen classes such as <c>milk</c> or <c>tree-nut</c>, or ids of materials.</summary>
    public ValueList<string> Excluded { get; init; }

    /// <summary>What the certificates of the scents allow in the finished soap; empty when not said.</summary>
    public ValueList<FragranceLimit> FragranceLimits { get; init; }

    /// <summary>Market areas that the soap is sold in, for example <c>EU</c>; empty when not said.</summary>
    public ValueList<string> Markets { get; init; }

    /// <summary>How warm things are and what the lye is made in; null when not said.</summary>
    public ProcessSetup? Process { get; init; }

    /// <summary>The mould; null when not said.</summary>
    public Mould? Mould { get; init; }

    /// <summary>How many of these moulds there are, from 1 to 10,000; 1 unless said.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public int Moulds { get; init => field = (int)Guard.InRange(value, MouldLimits, "The number of moulds", "", nameof(value)); } = 1;

    /// <summary>How the block is cut; null when not said, or for a mould of cavities.</summary>
    public CuttingPlan? Cut { get; init; }

    /// <summary>The temperature at the pour, from 0 to 100 degrees Celsius; null when not said.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Temperature? Pour
    {
        get;
        init
        {
            if (value is { } pour)
                Stored.Celsius(pour, MouldHeat.PourLimits, "The temperature at the pour", nameof(value));
            field = value;
        }
    }

    /// <summary>True when the mould is wrapped or stands warm.</summary>
    public bool IsInsulated { get; init; }

    /// <summary>Share of the batch that stays in pot and bowls, from 0 to 50 %; nothing unless said.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Ratio LeftInPot { get; init => field = Stored.ToRatio(Stored.Fraction(value, BarOrder.LeftInPotLimits, "What stays in the pot")); }

    /// <summary>Bars for sale that are wanted, from 1 to 1,000,000; null when not said.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public int? WantedBars { get; init => field = value is { } bars ? (int)Guard.InRange(bars, BarOrder.BarsLimits, "The number of bars", "", nameof(value)) : null; }

    /// <summary>The day of the pour; null when not said.</summary>
    public DateOnly? PouredOn { get; init; }

    /// <summary>The first day of sale or use; null when not said.</summary>
    public DateOnly? SoldFrom { get; init; }

    /// <summary>Weighings of a curing bar; null when there are none.</summary>
    public CureSeries? Cure { get; init; }

    /// <summary>When a bar counts as ready; null when not said, there is no default.</summary>
    public ReadyWhen? Ready { get; init; }

    /// <summary>What single cured bars weigh, a sample of up to 100,000; empty when none was weighed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A mass is not above 0, above 1000 kg, or not a number.</exception>
    /// <exception cref="ArgumentException">Too many bars.</exception>
    public ValueList<Mass> CuredBars
    {
        get;
        init
        {
            if (value.Count > 0)
                _ = new NetQuantity([.. value]);
            field = value;
        }
    }

    /// <summary>The mass that the label declares for one bar, above 0 up to 1000 kg; null when not said.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Mass? DeclaredMass
    {
        get;
        init
        {
            if (value is { } mass)
                Stored.BarGrams(mass, "The declared mass", nameof(value));
            field = value;
        }
    }
}
