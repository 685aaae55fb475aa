using Saponify.Internals;

namespace Saponify;

/// <summary>What is in a jug, added up: grams, moles, heat capacities in J/K, heat contents in J about 25 degrees Celsius.</summary>
internal sealed class JugContents
{
    /// <summary>The temperature that heats of solution are tabled at.</summary>
    internal const double Tabled = 25;

    internal JugContents(LyeJug jug)
    {
        double start = jug.AlkaliTemperature.DegreesCelsius - Tabled;
        foreach (AlkaliPortion portion in jug.Alkalis)
            Add(portion, start);
        foreach (LiquidPortion portion in jug.Liquids)
        {
            Contents contents = portion.Liquid.Contents;
            Add(contents, portion.Grams, HeatCapacities.HeatContent(portion) - (portion.Grams * HeatCapacities.Of(contents) * Tabled));
            if (portion.IsFrozen)
            {
                double ice = portion.Grams * contents.WaterFraction;
                Ice += ice;
                IceHeat += ice * (HeatCapacities.MeltingOfIce - (HeatCapacities.Ice * portion.StoredTemperature!.Value.Celsius));
            }
        }
        foreach (AdditivePortion portion in jug.Additives)
        {
            Contents contents = portion.Additive.Contents;
            Add(contents, portion.GramsFor(0), portion.GramsFor(0) * HeatCapacities.Of(contents) * start);
        }
    }

    internal double Pure { get; private set; }

    internal double PureSodium { get; private set; }

    internal double Water { get; private set; }

    /// <summary>Everything that is neither hydroxide nor water.</summary>
    internal double Other { get; private set; }

    internal double OtherCapacity { get; private set; }

    /// <summary>mol of NaOH and of KOH that come as a solid.</summary>
    internal (double Sodium, double Potassium) Solid { get; private set; }

    /// <summary>mol of NaOH and of KOH that come dissolved.</summary>
    internal (double Sodium, double Potassium) Bought { get; private set; }

    /// <summary>J that the bought lye has released at its maker's, in dissolving to the strength it came with.</summary>
    internal double BoughtReleased { get; private set; }

    /// <summary>J that the solid has released already in taking up its bound water.</summary>
    internal double Hydrate { get; private set; }

    /// <summary>mol of acid, the protons in doubt included: for a bound on heat they count.</summary>
    internal double Acid { get; private set; }

    /// <summary>mol of hydroxide that fat in the jug takes up at once; a fat without a saponification value as one of 265 mg KOH/g.</summary>
    internal double Fat { get; private set; }

    /// <summary>Sugar in the jug: it gives heat in lye that nobody has measured.</summary>
    internal double Sugar { get; private set; }

    internal double Alcohol { get; private set; }

    internal double Ice { get; private set; }

    /// <summary>J to warm the ice to 0 degrees and to melt it.</summary>
    internal double IceHeat { get; private set; }

    internal double Content { get; private set; }

    private void Add(AlkaliPortion portion, double start)
    {
        Alkali alkali = portion.Alkali;
        double pure = portion.Grams * alkali.PurePerGram, water = portion.Grams * alkali.BoundWaterFraction, moles = portion.Grams * alkali.HydroxidePerGram;
        double inert = Math.Max(0, portion.Grams - pure - water);
        bool isSodium = alkali.Kind == AlkaliKind.SodiumHydroxide;
        Pure += pure;
        PureSodium += isSodium ? pure : 0;
        Water += water;
        Other += inert;
        OtherCapacity += inert * HeatCapacities.Inert;
        Content += inert * HeatCapacities.Inert * start;
        if (moles <= 0)
            return;
        (double sodium, double potassium) = isSodium ? (moles, 0) : (0.0, moles);
        if (alkali.IsSolution)
        {
            LyeProperties bought = new(pure / (pure + water), isSodium ? 1 : 0);
            Bought = (Bought.Sodium + sodium, Bought.Potassium + potassium);
            BoughtReleased += bought.Released(sodium, potassium) * 1000;
            Content += (pure + water) * bought.HeatCapacityAt60 * start;
        }
        else
        {
            Solid = (Solid.Sodium + sodium, Solid.Potassium + potassium);
            Hydrate += Math.Min(moles, water / Molar.Water) * DissolvingHeat.OfHydrate(alkali.Kind) * 1000;
            Content += ((pure * HeatCapacities.Solid(alkali.Kind)) + (water * HeatCapacities.Water)) * start;
        }
    }

    private void Add(Contents contents, double grams, double content)
    {
        Water += grams * contents.WaterFraction;
        Other += grams * (1 - contents.WaterFraction);
        OtherCapacity += grams * HeatCapacities.BesideWater(contents);
        Acid += contents.AcidKind is { } acid ? grams * contents.AcidFraction * (acid.HydroxidePerGram + acid.HydroxideInDoubtPerGram) : 0;
        Fat += grams * contents.FatFraction * (contents.FatKind is { HydroxidePerGram: > 0 } fat ? fat.HydroxidePerGram : 0.265 / Molar.PotassiumHydroxide);
        Sugar += grams * contents.SugarFraction;
        Alcohol += grams * contents.AlcoholFraction;
        Content += content;
    }
}
