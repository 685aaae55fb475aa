namespace Saponify.PublishedValues;

/// <summary>What the exercises and comparisons start from.</summary>
internal static class Given
{
    /// <summary>g KOH per mol from the abridged atomic weights (CIAAW 2021); puts back what a source rounded.</summary>
    internal const double Koh = 56.105;

    /// <summary>g NaOH per g KOH: 39.997/56.105.</summary>
    internal const double NaohPerKoh = 39.997 / 56.105;

    internal static Alkali PureSodiumHydroxide { get; } = Alkali.SodiumHydroxide(Ratio.FromPercent(100));

    internal static Alkali PurePotassiumHydroxide { get; } = Alkali.PotassiumHydroxide(Ratio.FromPercent(100));

    /// <summary>A fat of which only the saponification value is known.</summary>
    internal static Fat FatOf(double milligramsKohPerGram, string id = "exercise-fat") =>
        FatOf(SaponificationValue.FromMilligramsKohPerGram(milligramsKohPerGram), id);

    internal static Fat FatOf(SaponificationValue value, string id = "exercise-fat") =>
        new Fat(id, id, FatClass.Triglyceride, new FatFigures()).WithLot(new Lot { Name = "exercise", Source = "the exercise", Saponification = value });

    internal static Fat Tri(string shorthand) => FatOf(FattyAcid.FromShorthand(shorthand).SaponificationOfTriglyceride, "tri-" + shorthand);

    internal static Fat FreeAcid(string shorthand) => FatOf(FattyAcid.FromShorthand(shorthand).SaponificationOfAcid, "acid-" + shorthand);

    /// <summary>A formula with two parts of water to one of alkali, where nothing but the alkali matters.</summary>
    internal static Formula Recipe(AlkaliPlan alkali, params ReadOnlySpan<FatPortion> fats) => new("Exercise")
    {
        Fats = ValueList.Create(fats),
        Alkali = alkali,
        Liquids = LiquidPlan.WaterToAlkali(Ratio.FromDecimalFractions(2)),
    };

    /// <summary>mol of hydroxide that the fats take up.</summary>
    internal static double DemandOf(params ReadOnlySpan<FatPortion> fats) => Recipe(PureFor(superfatPercent: 0), fats).Balance().FatDemand.Moles;

    internal static AlkaliPlan PureFor(double superfatPercent) => AlkaliPlan.ForSuperfat(Ratio.FromPercent(superfatPercent), PureSodiumHydroxide);

    /// <summary>Three fats that many bars are made of: lard 60, coconut 20, olive 20 per cent.</summary>
    internal static ValueList<FatPortion> LardCoconutOlive(double grams) => FatBlend.Of(
        (Pantry.Reference.Fat("lard"), Ratio.FromPercent(60)),
        (Pantry.Reference.Fat("coconut-oil"), Ratio.FromPercent(20)),
        (Pantry.Reference.Fat("olive-oil"), Ratio.FromPercent(20))).Weighing(Mass.FromGrams(grams));

    internal static void Near(double expected, double actual, double tolerance) => Assert.InRange(actual, expected - tolerance, expected + tolerance);
}
