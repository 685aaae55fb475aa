using Saponify.Tests.Support;
using static Saponify.Tests.Making.Jugs;

namespace Saponify.Tests.Making;

/// <summary>Vessels against heat, alkali and volume.</summary>
public class VesselTests
{
    private static LyeSolution HotLye => Jug(Naoh(130), Water(270, 22)).Dissolve();

    private static Vessel Of(string material, double milliliters = 1000) =>
        new(VesselMaterial.Of(material), Volume.FromMilliliters(milliliters), Length.FromCentimeters(11), Mass.FromGrams(200));

    private static VesselFindingKind[] Found(string material, double milliliters = 1000, double? headspace = null) =>
        [.. Of(material, milliliters).Check(HotLye, C(22), headspace is { } percent ? Ratio.FromPercent(percent) : null).Select(f => f.Kind)];

    [Theory]
    [InlineData("aluminium", VesselFindingKind.NeverForLye)]
    [InlineData("zinc", VesselFindingKind.NeverForLye)]
    [InlineData("tin", VesselFindingKind.NeverForLye)]
    [InlineData("copper-alloy", VesselFindingKind.NeverForLye)]
    [InlineData("pet", VesselFindingKind.NeverForLye)]
    [InlineData("hdpe", VesselFindingKind.TooHot)]
    [InlineData("carbon-steel", VesselFindingKind.TooHot)]
    [InlineData("polypropylene", VesselFindingKind.HotForLong)]
    public void Material_HasItsFinding(string material, VesselFindingKind kind)
    {
        VesselFinding finding = Assert.Single(Of(material).Check(HotLye, C(22)));
        Assert.Equal(kind, finding.Kind);
        Assert.NotEmpty(finding.Sources);
        Assert.All(finding.Sources, s => Assert.Equal(s, Pantry.Reference.Source(s).Key));
    }

    [Fact]
    public void Glass_IsAttackedAndMayCrack()
    {
        Assert.Equal([VesselFindingKind.Attacked, VesselFindingKind.ThermalShock], Found("soda-lime-glass"));
        Assert.Equal([VesselFindingKind.Attacked], Found("borosilicate-glass"));
        VesselFinding shock = Of("soda-lime-glass").Check(HotLye, C(22))[1];
        Assert.Equal((40, "K"), (shock.Limit, shock.Unit));
        Assert.Equal(HotLye.Peak.Celsius() - 22, shock.Found, 9);
        Assert.NotNull(Of("borosilicate-glass").CheckBath(C(105), C(0)));
        Assert.Null(Of("borosilicate-glass").CheckBath(C(95), C(0)));
        Assert.Null(Of("stainless-steel").CheckBath(C(105), C(-20)));
    }

    [Fact]
    public void CoolLye_InGoodWare_IsFine()
    {
        LyeSolution cool = Jug(Naoh(100), Ice(250, -18)).Dissolve();
        Assert.Empty(Of("polypropylene").Check(cool, C(20)));
        Assert.Empty(Of("stainless-steel").Check(cool, C(20)));
        Assert.Empty(Of("hdpe").Check(cool, C(20)));
        Assert.Empty(Of("soda-lime-glass").Check(cool, C(20)));
    }

    [Fact]
    public void VesselSmallerThanItsContent_IsFound()
    {
        Assert.Equal([VesselFindingKind.HotForLong, VesselFindingKind.TooSmall], Found("polypropylene", 250));
        VesselFinding small = Of("polypropylene", 250).Check(HotLye, C(22))[1];
        Assert.InRange(small.Found, 300, 320);
        Assert.Equal((250, "mL"), (small.Limit, small.Unit));
        Assert.Contains("does NOT fit", small.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Headspace_IsOnlyAskedForWhenGiven()
    {
        Assert.Equal([VesselFindingKind.HotForLong], Found("polypropylene", 500));
        Assert.Equal([VesselFindingKind.HotForLong, VesselFindingKind.LittleHeadspace], Found("polypropylene", 500, 50));
        Assert.Equal([VesselFindingKind.HotForLong], Found("polypropylene", 500, 35));
    }

    [Fact]
    public void LyeBeyondTheFigures_IsSaidNotGuessed()
    {
        VesselFinding finding = Assert.Single(Of("polypropylene").Check(Jug(Naoh(60), Water(40, 20)).Dissolve(), C(20)));
        Assert.Equal(VesselFindingKind.NoFigures, finding.Kind);
        Assert.Equal(2, Of("aluminium").Check(Jug(Naoh(60), Water(40, 20)).Dissolve(), C(20)).Count);
    }

    [Fact]
    public void Findings_AreInWords()
    {
        foreach (VesselMaterial material in VesselMaterial.All)
        {
            foreach (VesselFinding finding in new Vessel(material, Volume.FromMilliliters(100), Length.FromCentimeters(5), Mass.FromGrams(10)).Check(HotLye, C(22)))
                Assert.EndsWith(".", finding.ToString(), StringComparison.Ordinal);
        }
        Assert.Equal("The lye may reach 109 °C; HDPE stands 60 °C at the most (memory).", Of("hdpe").Check(HotLye, C(22))[0].ToString());
    }

    [Fact]
    public void Impossible_Vessels_AreRefused()
    {
        VesselMaterial pp = VesselMaterial.Of("POLYPROPYLENE");
        Assert.Throws<ArgumentOutOfRangeException>(() => new Vessel(pp, Volume.Zero, Length.FromCentimeters(10), Mass.FromGrams(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Vessel(pp, Volume.FromLiters(1), Length.Zero, Mass.FromGrams(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Vessel(pp, Volume.FromLiters(1), Length.FromCentimeters(10), Mass.FromGrams(-1)));
        Assert.Contains("stainless-steel", Assert.Throws<KeyNotFoundException>(() => VesselMaterial.Of("wood")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => Of("pet").Check(null!, C(20)));
    }

    [Fact]
    public void Equality_IsByContent()
    {
        EqualityContract.Test(Of("hdpe"), Of("hdpe"), Of("hdpe", 900), Of("pet"));
        EqualityContract.Test(Surroundings.StillAir(C(20)), Surroundings.StillAir(C(20)), Surroundings.StillAir(C(21)), Surroundings.IceBath());
        EqualityContract.Test(Jug(Naoh(1), Water(2, 3)), Jug(Naoh(1), Water(2, 3)), Jug(Naoh(1), Water(2, 4)), Jug(Koh(1), Water(2, 3)));
        EqualityContract.Test(new ProcessSetup { Room = C(20) }, new ProcessSetup { Room = C(20) }, ProcessSetup.Unknown);
    }
}
