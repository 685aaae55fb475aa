using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Turns a material into a line of a formula: <c>pantry.Fat("olive-oil").Weighing(Mass.FromGrams(420))</c>.</summary>
public static class Portions
{
    /// <summary>So much of a fat, by mass.</summary>
    /// <param name="fat">The fat.</param>
    /// <param name="mass">From 0 to 1e9 g.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass outside that range, or not a number.</exception>
    public static FatPortion Weighing(this Fat fat, Mass mass) => new(fat, mass);

    /// <summary>So much of a fat, by volume; its mass follows from the density on file, and the line keeps what was poured.</summary>
    /// <param name="fat">The fat.</param>
    /// <param name="volume">From 0 to 1e9 mL.</param>
    /// <exception cref="ArgumentOutOfRangeException">A volume outside that range, or not a number.</exception>
    /// <exception cref="InvalidOperationException">No density is on file: weigh it.</exception>
    public static FatPortion Pouring(this Fat fat, Volume volume)
    {
        ArgumentNullException.ThrowIfNull(fat);
        StoredVolume poured = StoredVolume.Of(volume);
        return new(fat, poured.Weight(fat.Figures.Density?.Value ?? throw NoDensity(fat.Name)), poured);
    }

    /// <summary>So much of a liquid, by mass.</summary>
    /// <param name="liquid">The liquid.</param>
    /// <param name="mass">From 0 to 1e9 g.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass outside that range, or not a number.</exception>
    public static LiquidPortion Weighing(this Liquid liquid, Mass mass) => new(liquid, mass);

    /// <summary>So much of a liquid, by volume; its mass follows from the density on file, and the line keeps what was poured.</summary>
    /// <param name="liquid">The liquid.</param>
    /// <param name="volume">From 0 to 1e9 mL.</param>
    /// <exception cref="ArgumentOutOfRangeException">A volume outside that range, or not a number.</exception>
    /// <exception cref="InvalidOperationException">No density is on file: weigh it.</exception>
    public static LiquidPortion Pouring(this Liquid liquid, Volume volume)
    {
        ArgumentNullException.ThrowIfNull(liquid);
        StoredVolume poured = StoredVolume.Of(volume);
        return new(liquid, poured.Weight(liquid.Density ?? throw NoDensity(liquid.Name)), poured);
    }

    /// <summary>So much of an additive, by mass.</summary>
    /// <param name="additive">The additive.</param>
    /// <param name="mass">From 0 to 1e9 g.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass outside that range, or not a number.</exception>
    public static AdditivePortion Weighing(this Additive additive, Mass mass) => new(additive) { Mass = mass };

    /// <summary>An additive as a share of the mass of the listed fats.</summary>
    /// <param name="additive">The additive.</param>
    /// <param name="share">From 0 to 1000 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share outside that range, or not a number.</exception>
    public static AdditivePortion ShareOfFats(this Additive additive, Ratio share) => new(additive) { OfFats = share };

    /// <summary>An additive whose amount is not known yet.</summary>
    /// <param name="additive">The additive.</param>
    public static AdditivePortion AmountUnknown(this Additive additive) => new(additive);

    /// <summary>So much of an alkali, as weighed.</summary>
    /// <param name="alkali">The alkali.</param>
    /// <param name="mass">From 0 to 1e9 g, impurity or solution water included.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass outside that range, or not a number.</exception>
    public static AlkaliPortion Weighing(this Alkali alkali, Mass mass) => new(alkali, mass);

    /// <summary>One of several alkalis, by its share of the hydroxide (equivalents, moles).</summary>
    /// <param name="alkali">The alkali.</param>
    /// <param name="share">From 0 to 100 %; the shares of a plan add up to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share outside that range, or not a number.</exception>
    public static AlkaliShare ShareOfHydroxide(this Alkali alkali, Ratio share) => new(alkali, Share(share), AlkaliShareBasis.Hydroxide);

    /// <summary>One of several alkalis, by its share of the mass as weighed, impurity included.</summary>
    /// <param name="alkali">The alkali.</param>
    /// <param name="share">From 0 to 100 %; the shares of a plan add up to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share outside that range, or not a number.</exception>
    public static AlkaliShare ShareOfMass(this Alkali alkali, Ratio share) => new(alkali, Share(share), AlkaliShareBasis.MassAsWeighed);

    private static double Share(Ratio share) => Stored.Fraction(share, 0, 1, "The share of an alkali");

    private static InvalidOperationException NoDensity(string name) => new($"No density of {name} is on file, so a volume can't be converted: weigh it.");
}
