using System.Text;

namespace Saponify.Tests.Reference;

/// <summary>Tables with faults: all faults of fields, the first of structure, each with its line.</summary>
public class CsvTableTests
{
    private static (CsvTable Table, List<TableFault> Faults) Read(string csv, params string[] columns)
    {
        List<TableFault> faults = [];
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(csv));
        return (CsvTable.Read("test.csv", stream, columns, faults), faults);
    }

    [Fact]
    public void Fields_WithQuotesCommasAndLineBreaks_AreReadWhole()
    {
        (CsvTable table, List<TableFault> faults) = Read("\uFEFFid,note\r\na,\"one, \"\"two\"\"\r\nthree\"\r\n\r\nb,\r\n", "id", "note");
        Assert.Empty(faults);
        Assert.Equal(["one, \"two\"\r\nthree", ""], table.Rows.Select(r => r["note"]));
        Assert.Equal([2, 5], table.Rows.Select(r => r.Line));
    }

    [Fact]
    public void Columns_MissingOrUnknown_AreNamed()
    {
        (_, List<TableFault> faults) = Read("id,colour\na,b\n", "id", "note");
        Assert.Equal(["note", "colour"], faults.Select(f => f.Column));
    }

    [Fact]
    public void Numbers_OfEveryWrongKind_AreAllReported()
    {
        (CsvTable table, List<TableFault> faults) = Read("id,x\na,189,5\n", "id", "x");
        Assert.Equal(2, Assert.Single(faults).Line);
        (table, faults) = Read("id,x\na,\"189,5\"\nb,NaN\nc,Infinity\nd,1e5\ne,-3\nf,200\ng,\nh,12.5\n", "id", "x");
        double?[] values = [.. table.Rows.Select(r => r.Number("x", 0, 100))];
        Assert.Equal([null, null, null, null, null, null, null, 12.5], values);
        Assert.Equal([2, 3, 4, 5, 6, 7], faults.Select(f => f.Line));
    }

    [Fact]
    public void Loader_ReportsEveryFaultOfEveryTable()
    {
        Dictionary<string, string> tables = new()
        {
            ["sources.csv"] = "key,citation,year,place,evidence,licence\ns,A book,1999,,standard,\n",
            ["fats.csv"] = "id,name,aliases,class,origin,allergen,fit,inci,inci_sodium,inci_potassium,note\na,A,,oil,plant,,lye,,,,\nb,,,wax,plant,,maybe,,,,\n",
            ["fat-figures.csv"] = "fat,figure,low,high,unit,basis,source,place,evidence,note\na,SV,200,190,mg/g,,s,,standard,\na,SX,1,2,mg/g,,s,,standard,\na,IV,1,2,mg/g,,t,,sure,\nz,IV,1,2,g/100g,,s,,standard,\n",
            ["acids.csv"] = "id,name,formula,molar_mass,protons,protons_in_doubt,source,place,evidence,note\n",
            ["liquids.csv"] = "id,name,aliases,fat,acid,allergen,origin,inci,note\nl,L,,nofat,,,,,\n",
            ["liquid-figures.csv"] = "liquid,figure,low,high,unit,basis,source,place,evidence,note\nl,water,99,99,%,,,,standard,\n",
            ["additives.csv"] = "id,name,aliases,kind,stage,fat,acid,formula,colour_index,cas,allergen,origin,inci,caution,note\n",
            ["additive-figures.csv"] = "additive,figure,low,high,unit,basis,source,place,evidence,note\n",
        };
        InvalidDataException fault = Assert.Throws<InvalidDataException>(() => new PantryLoader(name => new MemoryStream(Encoding.UTF8.GetBytes(tables[name]))).Load("test"));
        foreach (string expected in (string[])
            ["fat-figures.csv(2, low)", "fat-figures.csv(3, figure)", "fat-figures.csv(4, unit)", "fat-figures.csv(4, source)", "fat-figures.csv(4, evidence)",
             "fats.csv(2, class)", "fats.csv(3, name)", "fats.csv(3, fit)", "fats.csv(0)", "liquids.csv(2, fat)", "liquid-figures.csv(2, source)"])
            Assert.Contains(expected, fault.Message, StringComparison.Ordinal);
    }
}
