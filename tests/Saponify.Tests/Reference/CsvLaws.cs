using System.Text;
using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Reference;

/// <summary>Tables made at random: what was written is read, in whatever of the allowed forms, and nothing makes the reader throw.</summary>
public class CsvLaws
{
    private static readonly string[] s_columns = ["id", "text", "more"];

    private static readonly Gen<string> s_fields = Gen.ArrayOf(Gen.Frequency(
        (5, Gen.Elements("abc é石".ToCharArray())), (2, Gen.Elements(",\"\n".ToCharArray())), (1, Gen.Elements(";'\t\r".ToCharArray())))).Resize(12)
        .Select(c => new string(c).Replace("\r", "\r\n", StringComparison.Ordinal));

    private static readonly Gen<string[][]> s_tables = Gen.ArrayOf(Gen.ArrayOf(s_fields, 3).Where(r => r.Any(f => f.Length > 0))).Resize(20);

    private sealed record Form(string[][] Rows, bool Mark, string LineBreak, bool EmptyLines, bool LastBreak, bool QuoteAll, int[] Order);

    private static readonly Gen<Form> s_forms =
        from rows in s_tables
        from mark in Gen.Elements(true, false)
        from line in Gen.Elements("\n", "\r\n")
        from empty in Gen.Elements(true, false)
        from last in Gen.Elements(true, false)
        from quote in Gen.Elements(true, false)
        from order in Gen.Shuffle(new[] { 0, 1, 2 })
        select new Form(rows, mark, line, empty, last, quote, order);

    [Law]
    public Property WhatWasWritten_IsRead_InEveryForm() => Prop.ForAll(s_forms.ToArbitrary(), form =>
    {
        (List<string[]> rows, List<TableFault> faults) = Read(Encoding.UTF8.GetBytes(Written(form)));
        return faults.Count == 0 && rows.Count == form.Rows.Length && rows.Zip(form.Rows).All(p => p.First.SequenceEqual(p.Second));
    });

    [Law]
    public Property LineNumbers_CountEveryLine() => Prop.ForAll(s_forms.ToArbitrary(), form =>
    {
        List<int> lines = [];
        List<TableFault> faults = [];
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(Written(form)));
        using CsvTable table = CsvTable.Open("t", stream, s_columns, faults);
        while (table.Next())
            lines.Add(table.Line);
        int at = form.EmptyLines ? 3 : 2;
        foreach (int line in lines)
        {
            if (line != at)
                return false;
            at += 1 + Breaks(form.Rows[lines.IndexOf(line)]) + (form.EmptyLines ? 1 : 0);
        }
        return lines.Count == form.Rows.Length;
    });

    [Law]
    public Property MissingAndExtraColumns_AreNamed_AndNothingIsRead() => Prop.ForAll(s_forms.ToArbitrary(), Gen.Choose(0, 2).ToArbitrary(), (form, gone) =>
    {
        string text = Written(form).Replace(s_columns[gone] + (form.Order[^1] == gone ? form.LineBreak : ","), "other" + (form.Order[^1] == gone ? form.LineBreak : ","), StringComparison.Ordinal);
        if (form.QuoteAll)
            text = Written(form).Replace($"\"{s_columns[gone]}\"", "\"other\"", StringComparison.Ordinal);
        (List<string[]> rows, List<TableFault> faults) = Read(Encoding.UTF8.GetBytes(text));
        return rows.Count == 0 && faults.Select(f => f.Column).SequenceEqual([s_columns[gone], "other"]);
    });

    [Law]
    public Property AnyBytes_GiveFaultsOrRows_NeverAnException() => Prop.ForAll(
        Gen.ArrayOf(Gen.Frequency((6, Gen.Elements("id,text,more\n\"a;\r".Select(c => (byte)c).ToArray())), (1, Gen.Choose(0, 255).Select(b => (byte)b)))).ToArbitrary(),
        bytes =>
        {
            Read(bytes);
            PantryFile file = Pantry.Reference.With(bytes);
            return file.Pantry is null == file.Faults.Count > 0;
        });

    [Law]
    public Property AnyRows_OfAnOwnTable_GiveFaultsOrFats_NeverAnException()
    {
        Gen<string> field = Gen.OneOf(s_fields, Gen.Elements("olive-oil", "shea-butter", "beeswax", "x", "190", "190.5", "-1", "1e3", "wax", "2026-03-01", "sheet", "lot 4", "tree-nut", "plant", "corn oil", "NaN"));
        string[] columns = ["id", "name", "SV", "source", "lot", "date", "SV_low", "SV_high", "AV", "IV", "unsaponifiable", "density", "class", "origin", "allergen", "aliases", "note", "C18:1", "C12:0"];
        return Prop.ForAll(Gen.ArrayOf(Gen.ArrayOf(field, columns.Length)).Resize(5).ToArbitrary(), rows =>
        {
            string csv = string.Join(',', columns) + "\n" + string.Concat(rows.Select(r => string.Join(',', r.Select(f => Quoted(f, true))) + "\n"));
            PantryFile file = Pantry.Reference.With(csv);
            return (file.Pantry is null) == (file.Faults.Count > 0) && (file.Pantry is null || file.Fats.All(f => f.IsOwn && f.Provenance.All(p => p.Sources.Count > 0)));
        });
    }

    [Fact]
    public void AHundredThousandRows_AreRead_AndTheirFaultsReported()
    {
        StringBuilder csv = new("id,name,SV,source\n");
        for (int i = 0; i < 100_000; i++)
            csv.Append(System.Globalization.CultureInfo.InvariantCulture, $"own-{i},Own {i},{150 + (i % 100)}.5,\"sheet {i % 7}, page {i}\"\n");
        PantryFile file = Pantry.Reference.With(csv.ToString());
        Assert.Empty(file.Faults);
        Assert.Equal(100_000, file.Fats.Count);
        Assert.Equal(249.5, file.Pantry!.Fat("own 99").Saponification!.Value.MilligramsKohPerGram);
        PantryFile faulty = Pantry.Reference.With(csv.Replace(".5,", ",", csv.Length / 2, csv.Length / 4).Replace("150,", "x,", csv.Length / 2, csv.Length / 4).ToString());
        Assert.Null(faulty.Pantry);
        Assert.InRange(faulty.Faults.Count, 100, 1000);
        Assert.All(faulty.Faults, f => Assert.Equal("SV", f.Column));
    }

    private static (List<string[]> Rows, List<TableFault> Faults) Read(byte[] csv)
    {
        List<TableFault> faults = [];
        List<string[]> rows = [];
        using MemoryStream stream = new(csv);
        using CsvTable table = CsvTable.Open("t", stream, s_columns, faults);
        while (table.Next())
            rows.Add([table.Text(0), table.Text(1), table.Text(2)]);
        return (rows, faults);
    }

    private static string Written(Form form)
    {
        string gap = form.EmptyLines ? form.LineBreak : "";
        string Row(IReadOnlyList<string> fields) => string.Join(',', form.Order.Select(i => Quoted(fields[i], form.QuoteAll)));
        string text = Row(s_columns) + form.LineBreak + gap + string.Join(form.LineBreak + gap, form.Rows.Select(Row)) + (form.Rows.Length > 0 && form.LastBreak ? form.LineBreak + gap : "");
        return (form.Mark ? "\uFEFF" : "") + text;
    }

    private static string Quoted(string field, bool always) =>
        always || field.AsSpan().IndexOfAny("\",\r\n") >= 0 ? "\"" + field.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : field;

    private static int Breaks(string[] fields) => fields.Sum(f => f.Replace("\r\n", "\n", StringComparison.Ordinal).Count(c => c is '\n' or '\r'));
}
