using System.Text;
using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>Laws of the formula file.</summary>
public class FormulaFileLaws
{
    [Law]
    public Property Reading_WhatWasWritten_GivesTheSameFormula() => Prop.ForAll(Any.Formulas.Arbitrary(), formula =>
    {
        byte[] written = FormulaFile.Write(formula, Pantry.Reference);
        FormulaFile file = FormulaFile.Read(written, Pantry.Reference);
        return (file.Problems.Count == 0 && formula.Equals(file.Formula))
            .Label(string.Join("\n", file.Problems) + Encoding.UTF8.GetString(written));
    });

    [Law]
    public Property Writing_WhatWasRead_GivesTheSameBytes() => Prop.ForAll(Any.Formulas.Arbitrary(), formula =>
    {
        byte[] once = FormulaFile.Write(formula, Pantry.Reference);
        return FormulaFile.Write(FormulaFile.Read(once, Pantry.Reference).Formula!, Pantry.Reference).AsSpan().SequenceEqual(once);
    });

    [Law]
    public Property Percent_ReadsBackToTheSameFraction() => Prop.ForAll(Gen.OneOf(Any.Between(0, 1), Any.Between(0, 10), Any.Between(-300, 0).Select(e => Math.Pow(10, e))).Arbitrary(), fraction =>
    {
        string text = Saponify.Internals.AmountWriter.Percent(fraction);
        return Saponify.Internals.AmountReader.TryPercent(text, out Ratio read, out _) && read.DecimalFractions == fraction;
    });

    [Law]
    public Property AnyBytes_GiveProblemsOrAFormula_NeverAnException() => Prop.ForAll(
        Gen.Elements(Repository.Examples.Select(File.ReadAllBytes).ToArray()).SelectMany(bytes => Gen.Choose(0, bytes.Length - 1).SelectMany(at => Gen.Choose(0, 255).Select(b => (bytes, at, (byte)b)))).Arbitrary(),
        mutation =>
        {
            byte[] broken = [.. mutation.bytes];
            broken[mutation.at] = mutation.Item3;
            FormulaFile file = FormulaFile.Read(broken, Pantry.Reference);
            return file.Formula is null == file.Problems.Count > 0 && file.Problems.All(p => p.Place.Line >= 1 && p.Place.Column >= 1 && p.Text.Length > 0);
        });
}
