using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>Changes of the fats to compare a formula or a blend with: swap one fat, give one fat another share. The original stays as it is.</summary>
public static class WhatIf
{
    /// <summary>The same formula with another fat on one line, at equal mass. A target superfat then asks for another mass of alkali.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="line">Id of the fat line.</param>
    /// <param name="other">The fat that takes its place; the line takes its id.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentException">The formula has no such fat line.</exception>
    public static Formula SwappingAtEqualMass(this Formula formula, string line, Fat other)
    {
        int place = PlaceOf(formula, line);
        ArgumentNullException.ThrowIfNull(other);
        return Swapped(formula, place, other, formula.Fats[place].Mass);
    }

    /// <summary>The same formula with another fat on one line, with as much of it as takes up the same lye: the alkali stays.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="line">Id of the fat line.</param>
    /// <param name="other">The fat that takes its place; the line takes its id.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentException">The formula has no such fat line, or one of the two fats takes up no lye by its figures.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The new mass would pass 1e9 g.</exception>
    public static Formula SwappingAtEqualDemand(this Formula formula, string line, Fat other)
    {
        int place = PlaceOf(formula, line);
        ArgumentNullException.ThrowIfNull(other);
        FatPortion before = formula.Fats[place];
        if (!(before.Fat.HydroxidePerGram > 0 && other.HydroxidePerGram > 0))
            throw new ArgumentException($"{before.Fat.Name} and {other.Name} can't be swapped at equal demand: one of them has no usable saponification value.", nameof(other));
        return Swapped(formula, place, other, Mass.From(before.Mass.Value * (before.Fat.HydroxidePerGram / other.HydroxidePerGram), before.Mass.Unit));
    }

    /// <summary>The same formula with one fat at another share of the listed fats; their total and the proportions of the others stay.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="line">Id of the fat line.</param>
    /// <param name="share">Its new share by mass of the listed fats, from 0 to 100 %.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentException">The formula has no such fat line, or no other fat with a mass that could make room.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside that range, or not a number.</exception>
    public static Formula WithShare(this Formula formula, string line, Ratio share)
    {
        int place = PlaceOf(formula, line);
        return WithShare(formula, place, Stored.Fraction(share, 0, 1, "The share of a fat"));
    }

    /// <summary>The same blend with one fat at another share; the proportions of the others stay.</summary>
    /// <param name="blend">The blend.</param>
    /// <param name="fat">Id of the fat; the first one of that id.</param>
    /// <param name="share">Its new share by mass, from 0 to 100 %.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentException">The blend has no such fat, or no other fat with a share that could make room.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside that range, or not a number.</exception>
    public static FatBlend WithShare(this FatBlend blend, string fat, Ratio share)
    {
        ArgumentNullException.ThrowIfNull(blend);
        ArgumentNullException.ThrowIfNull(fat);
        double wanted = Stored.Fraction(share, 0, 1, "The share of a fat");
        int place = -1;
        for (int i = blend.Shares.Count - 1; i >= 0; i--)
            place = blend.Shares[i].Fat.Id == fat ? i : place;
        if (place < 0)
            throw new ArgumentException($"The blend has no fat \"{fat}\". It has: {string.Join(", ", blend.Shares.Select(s => s.Fat.Id))}.", nameof(fat));
        double others = 0;
        for (int i = 0; i < blend.Shares.Count; i++)
            others += i == place ? 0 : blend.Shares[i].Fraction;
        if (!(others > 0))
            throw NoRoom(blend.Shares[place].Fat, nameof(fat));
        return FatBlend.Of([.. blend.Shares.Select((s, i) => (s.Fat, Stored.ToRatio(i == place ? wanted : (1 - wanted) * s.Fraction / others)))]);
    }

    /// <summary>A curve: one fat from 0 to 100 % of the listed fats in equal steps, with the scores at each.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="line">Id of the fat line.</param>
    /// <param name="points">How many points, from 2 to 1001; 21 gives steps of 5 %.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentException">The formula has no such fat line, or no other fat with a mass that could make room.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number of points outside that range.</exception>
    public static IReadOnlyList<ShareStep> VaryingShare(this Formula formula, string line, int points)
    {
        int place = PlaceOf(formula, line);
        Guard.InRange(points, 2, 1001, "The number of points", "points");
        var steps = new ShareStep[points];
        for (int i = 0; i < points; i++)
        {
            double share = (double)i / (points - 1);
            steps[i] = new(share, WithShare(formula, place, share));
        }
        return steps;
    }

    private static Formula WithShare(Formula formula, int place, double share)
    {
        double total = formula.ListedGrams, others = 0;
        for (int i = 0; i < formula.Fats.Count; i++)
            others += i == place ? 0 : formula.Fats[i].Grams;
        if (!(others > 0))
            throw NoRoom(formula.Fats[place].Fat, nameof(formula));
        double factor = (1 - share) * total / others;
        return formula with
        {
            Fats = [.. formula.Fats.Select((f, i) => f with { Mass = Mass.From(i == place ? Stored.GramsIn(share * total, f.Mass.Unit) : f.Mass.Value * factor, f.Mass.Unit) })],
        };
    }

    private static Formula Swapped(Formula formula, int place, Fat other, Mass mass)
    {
        FatPortion[] fats = [.. formula.Fats];
        fats[place] = fats[place].IsLate ? other.Weighing(mass).AtTrace() : other.Weighing(mass);
        return formula with { Fats = ValueList.Create<FatPortion>(fats) };
    }

    private static int PlaceOf(Formula formula, string line)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(line);
        for (int i = 0; i < formula.Fats.Count; i++)
        {
            if (formula.Fats[i].Line == line)
                return i;
        }
        throw new ArgumentException($"The formula has no fat line \"{line}\". It has: {string.Join(", ", formula.Fats.Select(f => f.Line))}.", nameof(line));
    }

    private static ArgumentException NoRoom(Fat fat, string name) => new($"Beside {fat.Name} there is no fat whose share could make room or fill up; add another fat first.", name);
}
