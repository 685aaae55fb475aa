using System.Text;

namespace Saponify.Tests.Reference;

/// <summary>Tables with faults: all faults of fields and of their number, the first of quoting, each with its line.</summary>
public class CsvTableTests
{
    /// <summary>Opens a table, does something with each row, and gives back line by line what that said.</summary>
    private static (List<T> Rows, List<TableFault> Faults) Read<T>(byte[] csv, string[] columns, Func<CsvTable, T> each, int? required = null)
    {
        List<TableFault> faults = [];
        List<T> rows = [];
        using MemoryStream stream = new(csv);
        using CsvTable table = CsvTable.Open("test.csv", stream, columns, required ?? columns.Length, faults);
        while (table.Next())
            rows.Add(each(table));
        return (rows, faults);
    }

    private static (List<T> Rows, List<TableFault> Faults) Read<T>(string csv, string[] columns, Func<CsvTable, T> each, int? required = null) => Read(Encoding.UTF8.GetBytes(csv), columns, each, required);

    [Fact]
    public void Fields_WithQuotesCommasAndLineBreaks_AreReadWhole()
    {
        (List<(int, string)> rows, List<TableFault> faults) = Read("\uFEFFid,note\r\na,\"one, \"\"two\"\"\r\nthree\"\r\n\r\nb,\r\n", ["id", "note"], r => (r.Line, r.Text(1)));
        Assert.Empty(faults);
        Assert.Equal([(2, "one, \"two\"\r\nthree"), (5, "")], rows);
    }

    [Fact]
    public void Columns_StandInAnyOrder_WithoutCase()
    {
        (List<string> rows, List<TableFault> faults) = Read(" Note ,ID\nx,a\n", ["id", "note"], r => r.Text(0) + r.Text(1));
        Assert.Empty(faults);
        Assert.Equal(["ax"], rows);
    }

    [Fact]
    public void Columns_MissingUnknownOrTwice_AreNamed()
    {
        (List<int> rows, List<TableFault> faults) = Read("id,colour,id\na,b,c\n", ["id", "note"], r => r.Line);
        Assert.Empty(rows);
        Assert.Equal(["note", "colour", "id"], faults.Select(f => f.Column));
        Assert.All(faults, f => Assert.Equal(1, f.Line));
    }

    [Fact]
    public void Columns_ThatMayBeMissing_ReadAsBlank()
    {
        (List<(bool, string, double?)> rows, List<TableFault> faults) = Read("id\na\n", ["id", "note"], r => (r.Has(1), r.Text(1), r.Number(1, 0, 1)), required: 1);
        Assert.Empty(faults);
        Assert.Equal([(false, "", null)], rows);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\uFEFF")]
    [InlineData("\n\n")]
    public void AnEmptyFile_LacksItsColumns(string csv)
    {
        (List<int> rows, List<TableFault> faults) = Read(csv, ["id", "note"], r => r.Line);
        Assert.Empty(rows);
        Assert.Equal(["id", "note"], faults.Select(f => f.Column));
    }

    [Fact]
    public void Semicolons_AreExplained()
    {
        (_, List<TableFault> faults) = Read("id;note\na;b\n", ["id", "note"], r => r.Line);
        Assert.Contains("semicolons", Assert.Single(faults).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_WithTooFewOrTooManyFields_AreAllReported()
    {
        (List<string> rows, List<TableFault> faults) = Read("id,x\na\nb,1\nc,1,2\nd,189,5\n", ["id", "x"], r => r.Text(0));
        Assert.Equal(["b"], rows);
        Assert.Equal([2, 4, 5], faults.Select(f => f.Line));
    }

    [Fact]
    public void AnUnclosedQuote_IsOneFault_AtTheLineItStartsIn()
    {
        (List<string> rows, List<TableFault> faults) = Read("id,x\na,1\nb,\"2\nc,3\n", ["id", "x"], r => r.Text(0));
        Assert.Equal(["a"], rows);
        Assert.Equal(3, Assert.Single(faults).Line);
    }

    [Fact]
    public void Numbers_OfEveryWrongKind_AreAllReported()
    {
        (List<double?> values, List<TableFault> faults) = Read("id,x\na,\"189,5\"\nb,NaN\nc,Infinity\nd,1e5\ne,-3\nf,200\ng,\nh,12.5\ni,١٢\n", ["id", "x"], r => r.Number(1, 0, 100));
        Assert.Equal([null, null, null, null, null, null, null, 12.5, null], values);
        Assert.Equal([2, 3, 4, 5, 6, 7, 10], faults.Select(f => f.Line));
    }

    [Fact]
    public void Lists_AreSplitAtSemicolons()
    {
        (List<ValueList<string>> rows, _) = Read("id\na; b ;;c\n;\nx\n\" \"\n", ["id"], r => r.List(0));
        Assert.Equal<ValueList<string>>([["a", "b", "c"], [], ["x"], []], rows);
    }

    [Fact]
    public void Loader_ReportsEveryFaultOfEveryTable()
    {
        Dictionary<string, string> tables = new()
        {
            ["sources.csv"] = "key,citation,year,place,evidence,licence\ns,A book,1999,,standard,\n",
            ["fats.csv"] = "id,name,aliases,class,origin,allergen,fit,inci,inci_sodium,inci_potassium,note\na,A,,oil,plant,,lye,,,,\nb,,,wax,plant,,maybe,,,,\n",
            ["fat-figures.csv"] = "fat,figure,low,high,unit,basis,source,place,evidence,note\na,SV,200,190,mg/g,,s,,standard,\na,SX,1,2,mg/g,,s,,standard,\na,IV,1,2,mg/g,,t,,sure,\nz,IV,1,2,g/100g,,s,,standard,\n",
            ["acids.csv"] = "id,name,formula,molar_mass,protons,protons_in_doubt,source,place,evidence,note\nx,X,,,1,0,s,,standard,\n",
            ["liquids.csv"] = "id,name,aliases,fat,acid,allergen,origin,inci,note\nl,L,,nofat,,,,,\nl,L,,,,,,,\n",
            ["liquid-figures.csv"] = "liquid,figure,low,high,unit,basis,source,place,evidence,note\nl,water,99,99,%,,,,standard,\nl,water,98,98,%,,s,,standard,\n",
            ["additives.csv"] = "id,name,aliases,kind,stage,fat,acid,formula,colour_index,cas,allergen,origin,inci,caution,note\n",
            ["additive-figures.csv"] = "additive,figure,low,high,unit,basis,source,place,evidence,note\n",
            ["fragrance-allergens.csv"] = "id,name,cas,annex_entry,since,status,covers,condition,source,place,evidence,note\np,P,,1,once,label,,,s,,standard,\n",
            ["essential-oils.csv"] = "id,name,aliases,inci,inci_source,annex_entry,tints,density_low,density_high,density_basis,density_source,density_evidence,flash_point,flash_point_source,flash_point_evidence,note\no,O,,,,,perhaps,,,,,,,,,\n",
            ["essential-oil-constituents.csv"] = "oil,constituent,low,high,unit,basis,source,place,evidence,note\no,q,1,2,%,,s,,standard,\nn,p,3,2,%,,s,,standard,\n",
        };
        InvalidDataException fault = Assert.Throws<InvalidDataException>(() => PantryLoader.Load("test", name => new MemoryStream(Encoding.UTF8.GetBytes(tables[name]))));
        foreach (string expected in (string[])
            ["fat-figures.csv(2, low)", "fat-figures.csv(3, figure)", "fat-figures.csv(4, unit)", "fat-figures.csv(4, source)", "fat-figures.csv(4, evidence)",
             "fats.csv(2, class)", "fats.csv(3, name)", "fats.csv(0)", "acids.csv(2, molar_mass)", "liquids.csv(2, fat)", "liquids.csv(3, id)", "liquid-figures.csv(2, source)",
             "liquid-figures.csv(3, figure)", "fragrance-allergens.csv(2, since)", "essential-oils.csv(2, tints)", "essential-oil-constituents.csv(2, constituent)", "essential-oil-constituents.csv(3, low)",
             "essential-oils.csv(0)"])
            Assert.Contains(expected, fault.Message, StringComparison.Ordinal);
    }
}
