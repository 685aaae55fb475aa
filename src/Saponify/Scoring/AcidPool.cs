using Saponify.Internals;

namespace Saponify;

/// <summary>The acids of a fat charge, pooled by mass: what can be scored, what can't, and which fat brings what.</summary>
internal sealed class AcidPool
{
    /// <summary>Below so many grams of acids there is nothing to score.</summary>
    private const double LeastGrams = 1e-9;

    private readonly List<Entry> _fats = [];
    private readonly double[] _grams = new double[FattyAcid.Count];

    /// <summary>A fat with the grams of its acids, and the part of them that its profile names.</summary>
    internal readonly record struct Entry(FormulaPath? Path, string What, Fat? Fat, double AcidGrams, double Named)
    {
        /// <summary>True when its profile takes part in the scores.</summary>
        internal bool IsCounted => AcidGrams * Named > 0;

        internal ReadOnlySpan<double> Shares => Named > 0 ? Fat!.Profile!.Shares : default;
    }

    /// <summary>g of all acids, a wax and a fat of unknown kind with their whole mass.</summary>
    internal double Grams { get; private set; }

    internal IReadOnlyList<Entry> Fats => _fats;

    internal bool IsEmpty => !(Grams >= LeastGrams);

    /// <summary>g of each acid, by its index.</summary>
    internal ReadOnlySpan<double> GramsOfAcids => _grams;

    internal static AcidPool Of(FatBlend blend)
    {
        AcidPool pool = new();
        foreach (FatShare share in blend.Shares)
            pool.Add(null, share.Fat.Name, share.Fat, share.Fraction);
        return pool;
    }

    internal static AcidPool Of(BatchPlan plan)
    {
        AcidPool pool = new();
        ValueList<FatPortion> fats = plan.Formula.Fats;
        for (int i = 0; i < fats.Count; i++)
            pool.Add(FormulaPath.Fats.Item(i, fats[i].Line), fats[i].Fat.Name, fats[i].Fat, fats[i].Grams);
        foreach (Containing part in Containing.All(plan))
        {
            if (part.Contents.FatFraction > 0)
                pool.Add(part.Path, "fat in " + part.Name, part.Contents.FatKind, part.Grams * part.Contents.FatFraction);
        }
        return pool;
    }

    /// <summary>What no score can count, with its share of all acids.</summary>
    internal IEnumerable<UnscoredPart> Unscored()
    {
        foreach (Entry entry in _fats)
        {
            double share = entry.AcidGrams * (1 - entry.Named) / Grams;
            if (share > 0)
                yield return new(entry.What, share, Why(entry));
        }
        foreach (FattyAcid acid in FattyAcid.All)
        {
            double share = ScoreWeights.IsKnown(acid.Index) ? 0 : _grams[acid.Index] / Grams;
            if (share > 0)
                yield return new(acid.Shorthand, share, "the acid has no weights");
        }
    }

    private static string Why(Entry entry) =>
        entry.Fat is null ? "fat of unknown kind"
        : entry.Fat.Class == FatClass.Wax ? "a wax hardly turns into soap"
        : entry.Fat.Profile is null ? "its acids are not on file"
        : "its profile is incomplete";

    private void Add(FormulaPath? path, string what, Fat? fat, double grams)
    {
        double acids = fat is null ? grams : FatMakeup.AcidGramsToScore(fat, grams);
        double named = fat is null || fat.Class == FatClass.Wax ? 0
            : fat.Profile is { IsPartial: true } partial ? partial.RawSumFraction
            : fat.Profile is null ? 0 : 1;
        Entry entry = new(path, what, fat, acids, named);
        _fats.Add(entry);
        Grams += acids;
        ReadOnlySpan<double> shares = entry.Shares;
        for (int i = 0; i < shares.Length; i++)
            _grams[i] += acids * named * shares[i];
    }
}
