using System.Globalization;
using Saponify.Tests.Support;

namespace Saponify.Tests.Making;

/// <summary>The tables of heat as files: sources, order, ranges.</summary>
public class MakingTableTests
{
    [Fact]
    public void EveryCurvePoint_HasSourcesInTheTable_AndRisesInItsCurve()
    {
        Assert.Equal(8, MakingTables.Curves.Count);
        foreach (((string alkali, string figure), List<CurvePoint> points) in MakingTables.Curves)
        {
            Assert.Equal(points.Select(p => p.At).Distinct().Order(), points.Select(p => p.At));
            Assert.All(points, p =>
            {
                Assert.True(p.Low <= p.High, $"{alkali} {figure} {p.At.ToString(CultureInfo.InvariantCulture)}");
                Assert.NotEmpty(p.Sources);
                Assert.All(p.Sources, s => Assert.Equal(s, Pantry.Reference.Source(s).Key));
                // the weakest source decides
                Assert.Equal(p.Sources.Max(s => Pantry.Reference.Source(s).Evidence), p.Evidence);
            });
        }
    }

    [Fact]
    public void HeatOfSolution_LiesInItsBounds()
    {
        Assert.All(MakingTables.Curves[("sodium-hydroxide", "heat-released")], p => Assert.InRange(p.Value, 23, 44.52));
        Assert.All(MakingTables.Curves[("potassium-hydroxide", "heat-released")], p => Assert.InRange(p.Value, 44, 57.62));
    }

    [Fact]
    public void Materials_HaveSourcesAndFigures()
    {
        Assert.InRange(VesselMaterial.All.Count, 12, 100);
        foreach (VesselMaterial material in VesselMaterial.All)
        {
            Assert.All(material.Sources, s => Assert.Equal(s, Pantry.Reference.Source(s).Key));
            Assert.Equal(material.Sources.Max(s => Pantry.Reference.Source(s).Evidence), material.Evidence);
            Assert.Equal(material.Lye != LyeFitness.Never, material.HeatCapacity is not null);
            Assert.Equal(material.Lye != LyeFitness.Never, material.LargestTemperature is not null || material.ThermalShock is not null);
        }
    }

    [Theory]
    [InlineData("lye-curves.csv")]
    [InlineData("vessel-materials.csv")]
    [InlineData("vessel-figures.csv")]
    public void Files_ArePlain(string name)
    {
        string text = File.ReadAllText(Repository.Path("data", name));
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("  ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void SourcedCurve_NeverOvershoots_AndGoesThroughItsPoints()
    {
        SourcedCurve curve = new([Point(0, 0), Point(1, 0), Point(2, 5), Point(3, 5.1), Point(5, 5)], smooth: true);
        Assert.Equal(5.1, curve.Value(3), 12);
        for (double x = 0; x <= 5; x += 0.01)
        {
            Assert.InRange(curve.Value(x), 0, 5.1);
            Assert.True(x is < 1 or > 3 || curve.Value(x) >= curve.Value(x - 0.01) - 1e-12);
        }
        Assert.True(double.IsNaN(curve.Value(-0.01)) && double.IsNaN(curve.Value(5.01)) && double.IsNaN(curve.Value(double.NaN)));
        Assert.Null(curve.At(6));
    }

    private static CurvePoint Point(double at, double value) => new(at, value, value, ["memory"], Evidence.Memory, null);
}
