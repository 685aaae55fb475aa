using System.Reflection;
using System.Text;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>Everything that a batch setup holds can be stated in a formula file, and whatever is wrong there is told at its place.</summary>
public class SetupFileTests
{
    /// <summary>Every member once; what excludes each other stands in <see cref="Others"/>.</summary>
    private const string Whole = """
        {
          "scale": { "step": "1 g" }, "alkaliScale": { "step": "0.1 g" }, "today": "2026-11-25", "form": "bar", "excluded": [ "tree-nut" ], "markets": [ "EU" ],
          "fragranceLimits": [ { "additive": "fragrance-oil", "ofProduct": "2.5 %", "source": "certificate of lot 7" } ],
          "process": {
            "room": "21 °C", "water": "63 °F", "alkali": "19 °C", "heldBack": "5 °C", "fats": "40 °C", "lye": "35 °C", "mixed": "36 °C", "milkLimit": "38 °C",
            "ice": { "share": "20 %", "temperature": "-18 °C" },
            "vessel": { "material": "polypropylene", "volume": "1.5 L", "diameter": "12 cm", "mass": "140 g" },
            "surroundings": { "bath": "ice" },
            "leastHeadspace": "40 %"
          },
          "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "7 cm", "lining": "1 mm", "filledTo": "6 cm" } },
          "moulds": 2,
          "cut": { "thickness": "2.5 cm", "across": "4 cm", "kerf": "1 mm", "ends": "5 mm", "samples": 1 },
          "pour": "38 °C", "insulated": true, "leftInPot": "1 %", "wantedBars": 24, "pouredOn": "2026-09-01", "soldFrom": "2026-11-01",
          "cure": { "bar": "7", "poured": "131 g", "scale": { "step": "0.1 g" }, "weighings": [ { "date": "2026-09-03", "mass": "128 g" }, { "date": "2026-09-10", "mass": "4.4 oz" } ] },
          "ready": { "weeklyLossBelow": "1 %" },
          "curedBars": [ "101 g", "3.5 oz" ], "declaredMass": "98 g"
        }
        """;

    private static readonly BatchSetup s_whole = new()
    {
        Scale = new(Mass.FromGrams(1)),
        AlkaliScale = new(Mass.FromGrams(0.1)),
        Today = new(2026, 11, 25),
        Form = ProductForm.Bar,
        Excluded = ["tree-nut"],
        Markets = ["EU"],
        FragranceLimits = [new("fragrance-oil", Ratio.FromPercent(2.5), "certificate of lot 7")],
        Process = new()
        {
            Room = Temperature.FromDegreesCelsius(21),
            Water = Temperature.FromDegreesFahrenheit(63),
            Alkali = Temperature.FromDegreesCelsius(19),
            HeldBack = Temperature.FromDegreesCelsius(5),
            Fats = Temperature.FromDegreesCelsius(40),
            Lye = Temperature.FromDegreesCelsius(35),
            Mixed = Temperature.FromDegreesCelsius(36),
            MilkLimit = Temperature.FromDegreesCelsius(38),
            IceShare = Ratio.FromPercent(20),
            Ice = Temperature.FromDegreesCelsius(-18),
            Vessel = new(VesselMaterial.Of("polypropylene"), Volume.FromLiters(1.5), Length.FromCentimeters(12), Mass.FromGrams(140)),
            Surroundings = Surroundings.IceBath(),
            LeastHeadspace = Ratio.FromPercent(40),
        },
        Mould = Mould.Box(Length.FromCentimeters(25), Length.FromCentimeters(9), Length.FromCentimeters(7)).WithLining(Length.FromMillimeters(1)).FilledTo(Length.FromCentimeters(6)),
        Moulds = 2,
        Cut = new() { Thickness = Length.FromCentimeters(2.5), Across = Length.FromCentimeters(4), Kerf = Length.FromMillimeters(1), Ends = Length.FromMillimeters(5), Samples = 1 },
        Pour = Temperature.FromDegreesCelsius(38),
        IsInsulated = true,
        LeftInPot = Ratio.FromPercent(1),
        WantedBars = 24,
        PouredOn = new(2026, 9, 1),
        SoldFrom = new(2026, 11, 1),
        Cure = new("7", new BarWeighing(new(2026, 9, 3), Mass.FromGrams(128)), new BarWeighing(new(2026, 9, 10), Mass.FromOunces(4.4))) { Poured = Mass.FromGrams(131), Scale = new(Mass.FromGrams(0.1)) },
        Ready = ReadyWhen.WeeklyLossBelow(Ratio.FromPercent(1)),
        CuredBars = [Mass.FromGrams(101), Mass.FromOunces(3.5)],
        DeclaredMass = Mass.FromGrams(98),
    };

    public static TheoryData<string, BatchSetup> Others => new()
    {
        { "{}", BatchSetup.Unknown },
        { """{ "mould": { "slab": { "length": "40 cm", "width": "30 cm", "height": "4 cm" } } }""", new() { Mould = Mould.Slab(Length.FromCentimeters(40), Length.FromCentimeters(30), Length.FromCentimeters(4)) } },
        { """{ "mould": { "cylinder": { "diameter": "3 in", "height": "0.3 m", "lining": "1 mm", "filledTo": "28 cm" } } }""", new() { Mould = Mould.Cylinder(Length.FromInches(3), Length.FromMeters(0.3)).WithLining(Length.FromMillimeters(1)).FilledTo(Length.FromCentimeters(28)) } },
        { """{ "mould": { "cavities": { "count": 6, "each": "95 mL" } } }""", new() { Mould = Mould.Cavities(6, Volume.FromMilliliters(95)) } },
        { """{ "mould": { "volume": "1.2 L" } }""", new() { Mould = Mould.OfVolume(Volume.FromLiters(1.2)) } },
        { """{ "process": { "surroundings": { "stillAir": "12 °C" } } }""", new() { Process = new() { Surroundings = Surroundings.StillAir(Temperature.FromDegreesCelsius(12)) } } },
        {
            """{ "process": { "surroundings": { "ownFigures": { "temperature": "9 °C", "leastTransfer": "60 W/(m2 K)", "mostTransfer": "60 W/(m2 K)" } } } }""",
            new() { Process = new() { Surroundings = new(Temperature.FromDegreesCelsius(9), HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(60), HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(60)) } }
        },
        { """{ "ready": { "withinOfFinal": "0.5 %" } }""", new() { Ready = ReadyWhen.WithinOfFinal(Ratio.FromPercent(0.5)) } },
        { """{ "cure": { "weighings": [ { "date": "2026-09-03", "mass": "128 g" } ] } }""", new() { Cure = new("the bar", new BarWeighing(new(2026, 9, 3), Mass.FromGrams(128))) } },
        // an alias would be a limit that no rule finds
        { """{ "fragranceLimits": [ { "additive": "Fragrance Oil", "ofProduct": "2 %", "source": "bottle" } ] }""", new() { FragranceLimits = [new("fragrance-oil", Ratio.FromPercent(2), "bottle")] } },
    };

    public static TheoryData<string, string, string, string> Faults => new()
    {
        // setup, id, place below /setup, what would be right
        { """{ "pour": "38" }""", "SFY1006", "/pour", "write a temperature such as \"38 °C\"" },
        { """{ "pour": "38 cm" }""", "SFY1006", "/pour", "write a temperature" },
        { """{ "pour": 38 }""", "SFY1005", "/pour", "write a temperature" },
        { """{ "pour": "101 °C" }""", "SFY1007", "/pour", "pour goes from 0 to 100 °C" },
        { """{ "temperatures": { "room": "21 °C" } }""", "SFY1002", "/temperatures", "known here: scale" },
        { """{ "process": { "rooms": "21 °C" } }""", "SFY1002", "/process/rooms", "did you mean \"room\"?" },
        { """{ "process": { "room": "61 °C" } }""", "SFY1007", "/process/room", "room goes from -30 to 60 °C" },
        { """{ "process": { "milkLimit": "-1 °C" } }""", "SFY1007", "/process/milkLimit", "milkLimit goes from 0 to 100 °C" },
        { """{ "process": { "ice": { "temperature": "1 °C" } } }""", "SFY1007", "/process/ice/temperature", "temperature goes from -80 to 0 °C" },
        { """{ "process": { "leastHeadspace": "0.4" } }""", "SFY1006", "/process/leastHeadspace", "write a share" },
        { """{ "process": { "vessel": { "material": "wood", "volume": "1 L", "diameter": "11 cm", "mass": "90 g" } } }""", "SFY1008", "/process/vessel/material", "known: aluminium, " },
        { """{ "process": { "vessel": { "material": "polypropilene", "volume": "1 L", "diameter": "11 cm", "mass": "90 g" } } }""", "SFY1008", "/process/vessel/material", "nearest: polypropylene" },
        { """{ "process": { "vessel": { "material": "hdpe", "volume": "1 kg", "diameter": "11 cm", "mass": "90 g" } } }""", "SFY1006", "/process/vessel/volume", "write a volume" },
        { """{ "process": { "vessel": { "material": "hdpe", "volume": "1 L", "diameter": "11", "mass": "90 g" } } }""", "SFY1006", "/process/vessel/diameter", "write a length such as \"25 cm\"" },
        { """{ "process": { "vessel": { "material": "hdpe", "volume": "1 L", "diameter": "6 m", "mass": "90 g" } } }""", "SFY1007", "/process/vessel/diameter", "diameter goes from 1 to 500 cm" },
        { """{ "process": { "vessel": { "material": "hdpe", "volume": "1 L", "diameter": "11 cm" } } }""", "SFY1004", "/process/vessel/mass", "write a mass" },
        { """{ "process": { "surroundings": { } } }""", "SFY1004", "/process/surroundings/bath", "write \"bath\": \"ice\", stillAir, or ownFigures" },
        { """{ "process": { "surroundings": { "bath": "sea" } } }""", "SFY1009", "/process/surroundings/bath", "write one of: \"ice\"" },
        { """{ "process": { "surroundings": { "bath": "ice", "stillAir": "12 °C" } } }""", "SFY1010", "/process/surroundings/stillAir", "keep one of them" },
        { """{ "process": { "surroundings": { "ownFigures": { "temperature": "9 °C", "leastTransfer": "60", "mostTransfer": "90 W/(m2 K)" } } } }""", "SFY1006", "/process/surroundings/ownFigures/leastTransfer", "write a heat transfer" },
        { """{ "process": { "surroundings": { "ownFigures": { "temperature": "9 °C", "leastTransfer": "90 W/(m2 K)", "mostTransfer": "60 W/(m2 K)" } } } }""", "SFY1007", "/process/surroundings/ownFigures/mostTransfer", "write the same figure twice" },
        { """{ "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "7 cm" }, "cavities": { "count": 6, "each": "95 mL" } } }""", "SFY1010", "/mould/cavities", "keep one mould" },
        { """{ "mould": { } }""", "SFY1004", "/mould/box", "write one of box, slab, cylinder, cavities, volume" },
        { """{ "mould": "25 cm, 9 cm, 7 cm" }""", "SFY1005", "/mould", "write an object" },
        { """{ "mould": { "box": { "length": "25 cm", "width": "9 cm" } } }""", "SFY1004", "/mould/box/height", "write a length" },
        { """{ "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "11 m" } } }""", "SFY1007", "/mould/box/height", "height goes from 0.1 to 1000 cm" },
        { """{ "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "7 cm", "lining": "4.5 cm" } } }""", "SFY1007", "/mould/box/lining", "it is thinner than 4.5 cm here" },
        { """{ "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "7 cm", "lining": "-1 mm" } } }""", "SFY1007", "/mould/box/lining", "lining goes from 0" },
        { """{ "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "7 cm", "lining": "5 cm", "filledTo": "7 cm" } } }""", "SFY1007", "/mould/box/lining", "it is thinner than" },
        { """{ "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "7 cm", "lining": "1 cm", "filledTo": "7 cm" } } }""", "SFY1007", "/mould/box/filledTo", "above 0 and at most 6 cm, the height above the lining" },
        { """{ "mould": { "box": { "length": "25 cm", "width": "9 cm", "height": "7 cm", "filledTo": "0 cm" } } }""", "SFY1007", "/mould/box/filledTo", "above 0 and at most 7 cm" },
        { """{ "mould": { "cavities": { "count": 6, "each": "95 mL", "lining": "1 mm" } } }""", "SFY1002", "/mould/cavities/lining", "known here: count, each" },
        { """{ "mould": { "cavities": { "count": 0, "each": "95 mL" } } }""", "SFY1007", "/mould/cavities/count", "count goes from 1 to 100000" },
        { """{ "mould": { "volume": "0 mL" } }""", "SFY1007", "/mould/volume", "volume goes from 0.1 to 10000000 mL" },
        { """{ "moulds": "2" }""", "SFY1005", "/moulds", "write a whole number such as 12" },
        { """{ "moulds": 1.5 }""", "SFY1006", "/moulds", "write a whole number such as 12" },
        { """{ "moulds": 1e400 }""", "SFY1007", "/moulds", "moulds goes from 1 to 10000" },
        { """{ "wantedBars": -3 }""", "SFY1007", "/wantedBars", "wantedBars goes from 1 to 1000000" },
        { """{ "cut": { } }""", "SFY1004", "/cut/thickness", "write a length" },
        { """{ "cut": { "thickness": "25 g" } }""", "SFY1006", "/cut/thickness", "write a length" },
        { """{ "cut": { "thickness": "2.5 cm", "kerf": "6 cm" } }""", "SFY1007", "/cut/kerf", "kerf goes from 0 to 5 cm" },
        { """{ "leftInPot": "51 %" }""", "SFY1007", "/leftInPot", "leftInPot goes from 0 to 50 %" },
        { """{ "insulated": "yes" }""", "SFY1005", "/insulated", "write true or false" },
        { """{ "pouredOn": "2026-02-30" }""", "SFY1006", "/pouredOn", "write a date such as \"2026-11-25\"" },
        { """{ "today": "25 November 2026" }""", "SFY1006", "/today", "write a date" },
        { """{ "cure": { "weighings": [ { "date": "2026-09-03", "mass": "0 g" } ] } }""", "SFY1007", "/cure/weighings/0/mass", "mass goes from " },
        { """{ "cure": { "weighings": [ ] } }""", "SFY1004", "/cure/weighings", "list at least one, or leave \"cure\" out" },
        { """{ "ready": { "weeklyLossBelow": "1 %", "withinOfFinal": "1 %" } }""", "SFY1010", "/ready/withinOfFinal", "keep one of them" },
        { """{ "ready": { "weeklyLossBelow": "51 %" } }""", "SFY1007", "/ready/weeklyLossBelow", "weeklyLossBelow goes from 0.01 to 50 %" },
        { """{ "curedBars": [ "101 g", "99" ] }""", "SFY1006", "/curedBars/1", "write a list of masses" },
        { """{ "curedBars": [ 101 ] }""", "SFY1005", "/curedBars/0", "write a list of masses" },
        { """{ "curedBars": "101 g" }""", "SFY1005", "/curedBars", "write a list of masses" },
        { """{ "curedBars": [ "0 g" ] }""", "SFY1007", "/curedBars/0", "curedBars goes from " },
        { """{ "declaredMass": "98 mL" }""", "SFY1006", "/declaredMass", "write a mass" },
        { """{ "fragranceLimits": [ { "additive": "fragrance-oils", "ofProduct": "2 %", "source": "bottle" } ] }""", "SFY1008", "/fragranceLimits/0/additive", "nearest: fragrance-oil" },
        { """{ "fragranceLimits": [ { "additive": "fragrance-oil", "ofProduct": "102 %", "source": "bottle" } ] }""", "SFY1007", "/fragranceLimits/0/ofProduct", "ofProduct goes from 0 to 100 %" },
        { """{ "fragranceLimits": [ { "additive": "fragrance-oil", "ofProduct": "2 %" } ] }""", "SFY1004", "/fragranceLimits/0/source", "write a text" },
    };

    [Fact]
    public void AFileWithAllOfIt_GivesTheSetupBuiltInCode()
    {
        FormulaFile file = Read(Whole);
        Assert.Empty(file.Problems);
        Assert.Equal(s_whole, file.Setup);
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void EachAlternative_GivesTheSetupBuiltInCode(string setup, BatchSetup expected)
    {
        FormulaFile file = Read(setup);
        Assert.Empty(file.Problems);
        Assert.Equal(expected, file.Setup);
    }

    /// <summary>Fails when a property is added and the file is forgotten.</summary>
    [Fact]
    public void EveryPropertyOfASetup_IsReachedFromAFile()
    {
        BatchSetup setup = Read(Whole).Setup;
        string[] missed =
        [
            .. Unreached(setup, BatchSetup.Unknown),
            .. Unreached(setup.Process!, ProcessSetup.Unknown),
            .. Unreached(setup.Cut!, new CuttingPlan { Thickness = Length.FromMeters(1) }),
        ];
        Assert.Empty(missed);
        Assert.Equal(["BatchSetup.Pour"], Unreached(setup with { Pour = null }, BatchSetup.Unknown));
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void AFault_IsToldAtItsPlace_WithWhatWouldBeRight(string setup, string id, string place, string expected)
    {
        FormulaFile file = Read(setup);
        Problem problem = Assert.Single(file.Problems);
        Assert.Equal((id, "/setup" + place), (problem.Id, problem.Pointer));
        Assert.StartsWith(expected, problem.Expected, StringComparison.Ordinal);
        Assert.False(problem.Text.EndsWith('.'));
        Assert.Null(file.Formula);
        Assert.Equal(BatchSetup.Unknown, file.Setup);
    }

    [Fact]
    public void AllFaults_AreToldAtOnce_EachWithItsLine()
    {
        FormulaFile file = Read("""
            {
              "process": { "room": "210 °C", "water": "17" },
              "mould": { "box": { "length": "25", "width": "9 cm", "height": "7 cm" } },
              "moulds": 0,
              "soldFrom": "soon",
              "curedBars": [ "101 g", "99", "0 g" ]
            }
            """);
        Assert.Equal(["/process/room", "/process/water", "/mould/box/length", "/moulds", "/soldFrom", "/curedBars/1", "/curedBars/2"], file.Problems.Select(p => p.Pointer["/setup".Length..]));
        Assert.Equal([5, 5, 6, 7, 8, 9, 9], file.Problems.Select(p => p.Place.Line));
    }

    [Fact]
    public void ASampleTooLarge_IsAFault_AndNoException()
    {
        string Sample(int bars) => $$"""{ "curedBars": [{{string.Join(',', Enumerable.Repeat("\"1 g\"", bars))}}] }""";
        Assert.Empty(Read(Sample(100_000)).Problems);
        Problem problem = Assert.Single(Read(Sample(100_001)).Problems);
        Assert.Equal(("SFY1014", "/setup/curedBars"), (problem.Id, problem.Pointer));
    }

    /// <summary>The greatest and the least that a member allows are what the type behind it allows, in every unit: none of them throws.</summary>
    [Theory]
    [InlineData("""{ "process": { "vessel": { "material": "hdpe", "volume": "1000 L", "diameter": "5 m", "mass": "2204.6226218487 lb" } } }""")]
    [InlineData("""{ "process": { "vessel": { "material": "HDPE", "volume": "1 mL", "diameter": "10 mm", "mass": "0 g" }, "room": "140 °F", "ice": { "share": "100 %", "temperature": "32 °F" } } }""")]
    [InlineData("""{ "mould": { "box": { "length": "10 m", "width": "1 mm", "height": "393.7007874015748 in" } }, "cut": { "thickness": "10 m", "across": "1 mm", "kerf": "5 cm", "ends": "1 m", "samples": 100000 }, "moulds": 10000 }""")]
    [InlineData("""{ "mould": { "cavities": { "count": 100000, "each": "10000 L" } }, "leftInPot": "50 %", "pour": "212 °F", "wantedBars": 1e6, "curedBars": [ "1000 kg", "0.001 mg" ] }""")]
    public void TheEndsOfTheRanges_AreAllowed(string setup) => Assert.Empty(Read(setup).Problems);

    [Fact]
    public void AnEdit_LeavesTheSetupAsItIs()
    {
        string json = With(Whole);
        FormulaFile file = FormulaFile.Read(json, Pantry.Reference);
        byte[] edited = file.Edit(file.Formula! with { Name = "Other", Suppressions = [new("SFY2015", "", "tried")] });
        Assert.Contains(Whole, Encoding.UTF8.GetString(edited), StringComparison.Ordinal);
        Assert.Equal(s_whole, FormulaFile.Read(edited, Pantry.Reference).Setup);
    }

    private static FormulaFile Read(string setup) => FormulaFile.Read(With(setup), Pantry.Reference);

    private static string With(string setup) => FormulaFileTests.Whole.Replace("\"name\": \"Test\"", $"\"name\": \"Test\", \"setup\":\n{setup}", StringComparison.Ordinal);

    private static IEnumerable<string> Unreached<T>(T stated, T unknown) where T : class
    {
        PropertyInfo[] properties = [.. typeof(T).GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite)];
        Assert.True(properties.Length > 4);
        return properties.Where(p => Equals(p.GetValue(stated), p.GetValue(unknown))).Select(p => $"{typeof(T).Name}.{p.Name}");
    }
}
