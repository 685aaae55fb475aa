using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Scoring;

/// <summary>Generators of blends and profiles.</summary>
public static class AnyBlend
{
    private static readonly FattyAcid[] s_weighted = [.. FattyAcid.All.Where(a => ScoreWeights.Of(a, WeightKind.Hardness) is not null)];

    /// <summary>Fats whose acids can all be scored.</summary>
    public static readonly Fat[] Scorable = [.. Pantry.Reference.Fats.Where(f => FatBlend.Of((f, Ratio.FromPercent(100))).Scores(Ratio.Zero, Ratio.Zero).IsScored)];

    /// <summary>Two to six fats of the tables, every one of them scorable.</summary>
    public static Gen<FatBlend> Scored { get; } = Of(Gen.Elements(Scorable));

    /// <summary>Two to six fats of the tables, waxes and fats without profile included.</summary>
    public static Gen<FatBlend> Any { get; } = Of(Gen.Elements(Pantry.Reference.Fats.ToArray()));

    /// <summary>Some acids with weights, in any proportion that adds up to 100 %.</summary>
    public static Gen<(FattyAcid Acid, double Share)[]> Acids { get; } =
        from acids in Gen.Elements(s_weighted).NonEmptyListOf().Resize(5)
        from parts in Gen.ArrayOf(Support.Any.Between(0.01, 1), acids.Count)
        let distinct = acids.Distinct().ToArray()
        let sum = parts.Take(distinct.Length).Sum()
        select distinct.Select((a, i) => (a, parts[i] / sum)).ToArray();

    /// <summary>A fat of one's own with these acids.</summary>
    public static Fat Own(string id, params (FattyAcid Acid, double Share)[] acids) => new(id, id, FatClass.Triglyceride, new()
    {
        Profile = FattyAcidProfile.Of([.. acids.Select(a => (a.Acid, Ratio.FromDecimalFractions(a.Share)))]),
        ProfileSources = ["made up for this test"],
    });

    private static Gen<FatBlend> Of(Gen<Fat> fats) =>
        from some in fats.NonEmptyListOf().Resize(5)
        from last in fats
        from parts in Gen.ArrayOf(Support.Any.Between(0.01, 1), some.Count + 1)
        let sum = parts.Sum()
        select FatBlend.Of([.. some.Append(last).Select((f, i) => (f, Ratio.FromDecimalFractions(parts[i] / sum)))]);
}
