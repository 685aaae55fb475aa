namespace Saponify.PublishedValues.Making;

/// <summary>Moulds against geometry and exact units, net quantity against the Directive.</summary>
public class MouldAndNetQuantityTests
{
    /// <summary>The inch is 25.4 mm exactly (NIST Handbook 44, Appendix C), so the cubic inch is 16.387064 mL exactly; the US fluid ounce is 231/128 cubic inches.</summary>
    [Theory]
    [InlineData(1, 1, 1, 16.387064)]
    [InlineData(10, 3.5, 2.5, 1433.86810)]
    [InlineData(8, 4, 3, 1573.158144)]
    public void Box_InInches_HoldsItsCubicInches(double length, double width, double height, double millilitres)
    {
        Mould box = Mould.Box(Length.FromInches(length), Length.FromInches(width), Length.FromInches(height));
        Given.Near(millilitres, box.Volume.Milliliters, 1e-9 * millilitres);
    }

    [Fact]
    public void UsFluidOunces_AreTheirCubicInches() =>
        Given.Near(16.387064 * 231 / 128 * 12, Mould.Cavities(12, Volume.FromUsOunces(1)).Volume.Milliliters, 1e-6);

    /// <summary>Geometry: a cylinder of diameter 2 and height 1/pi holds 1.</summary>
    [Fact]
    public void Cylinder_IsPiByGeometry() =>
        Given.Near(1000, Mould.Cylinder(Length.FromCentimeters(20), Length.FromCentimeters(10 / Math.PI)).Volume.Milliliters, 1e-9);

    /// <summary>Directive 76/211/EEC, Annex I, point 2.4, row by row; the row above 1 kg from memory.</summary>
    [Theory]
    [InlineData(5, 0.5)]          // 9 %, rounded up to a tenth of a gram
    [InlineData(20, 1.8)]
    [InlineData(50, 4.5)]
    [InlineData(75, 4.5)]
    [InlineData(100, 4.5)]
    [InlineData(120, 5.4)]        // 4.5 %
    [InlineData(111, 5.0)]        // 4.995, rounded up
    [InlineData(200, 9)]
    [InlineData(250, 9)]
    [InlineData(300, 9)]
    [InlineData(400, 12)]         // 3 %
    [InlineData(500, 15)]
    [InlineData(750, 15)]
    [InlineData(1000, 15)]
    [InlineData(2000, 30)]        // 1.5 %
    public void TolerableNegativeError_FollowsTheDirective(double declared, double error) =>
        Given.Near(error, TolerableNegativeError.Of(Mass.FromGrams(declared))!.Value.Grams, 1e-9);

    [Theory]
    [InlineData(4.9)]
    [InlineData(10_001)]
    public void TolerableNegativeError_EndsWhereTheDirectiveDoes(double declared) => Assert.Null(TolerableNegativeError.Of(Mass.FromGrams(declared)));

    /// <summary>For 100 g the same Annex counts a pack below 95.5 g as short, and refuses the e mark below 91 g.</summary>
    [Fact]
    public void HundredGrams_HasItsTwoLimits()
    {
        NetQuantity sample = new(Mass.FromGrams(90.9), Mass.FromGrams(95.4), Mass.FromGrams(95.5), Mass.FromGrams(104));
        Given.Near(50, sample.ShareBelow(Mass.FromGrams(100))!.Value.Percent, 1e-9);
        Given.Near(25, sample.ShareBelowTwice(Mass.FromGrams(100))!.Value.Percent, 1e-9);
    }

    /// <summary>The ounce is 28.349523125 g exactly (NIST Handbook 44, Appendix C): 4 oz are 113.4 g, and neither unit may say more than there is.</summary>
    [Theory]
    [InlineData(113.4, "Net Wt 4 oz (113 g)")]
    [InlineData(113.3, "Net Wt 3.9 oz (113 g)")]
    [InlineData(453.59237, "Net Wt 1 lb (453 g)")]
    public void Declaration_IsCutDownInBothUnits(double grams, string text) => Assert.Equal(text, NetQuantity.Declaration(Mass.FromGrams(grams)));

    /// <summary>
    /// Student's t for 95 % between both limits, from the usual table (NIST/SEMATECH e-Handbook, 1.3.6.7.2, column 0.975): it decides the lower limit of the mean too.
    /// With two bars t(0.95) is 6.314 and with five 2.132 (column 0.95), so the largest mean to declare is mean - t s/sqrt(n).
    /// </summary>
    [Theory]
    [InlineData(new[] { 200.0, 201.0 }, 6.314)]
    [InlineData(new[] { 200.0, 201.0, 202.0, 203.0, 204.0 }, 2.132)]
    public void Suggestion_LeavesStudentsMargin(double[] grams, double t)
    {
        NetQuantity sample = new([.. grams.Select(g => Mass.FromGrams(g))]);
        double expected = sample.Mean.Grams - (t * sample.Spread!.Value.Grams / Math.Sqrt(grams.Length));
        Given.Near(expected, sample.Suggest(Ratio.Zero, Mass.FromGrams(0.01))!.Value.Grams, 0.011);
    }
}
