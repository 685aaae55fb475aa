using Saponify.Internals;

namespace Saponify;

/// <summary>
/// The superfat as a function of its uncertain inputs: s = 1 - (N - A)/F with F = sum m v of the fats, A of the acids and N = sum m p/M of
/// the alkalis. Collects the middles, the half widths and the corners of a plan.
/// </summary>
internal sealed class MarginModel
{
    private readonly List<Cause> _causes = [];
    private readonly List<string> _noData = [];
    private readonly Dictionary<Fat, FatPart> _fats = new(ReferenceOrEqual.Instance);
    private (double Low, double Middle, double High) _fat, _acid, _alkali;

    internal MarginModel(BatchPlan plan, Scale? scale, Scale? alkaliScale)
    {
        double error = scale?.HalfWidth ?? 0;
        Fats(plan.Formula, error);
        Others(plan, error);
        foreach (FatPart part in _fats.Values)
            Close(part);
        Alkalis(plan, (alkaliScale ?? scale)?.HalfWidth ?? 0);
        if (alkaliScale is not null)
        {
            double relative = (scale?.AccuracyFraction ?? 0) + (alkaliScale.AccuracyFraction ?? 0);
            Add(FormulaPath.Alkali, MarginCauseKind.TwoScales, "the alkali on another scale", CauseOf.Alkali, _alkali.Middle * relative);
            _alkali = (_alkali.Low * (1 - relative), _alkali.Middle, _alkali.High * (1 + relative));
        }
    }

    internal IReadOnlyList<Cause> Causes => _causes;

    internal ValueList<string> NoData => [.. _noData];

    internal double FatMiddle => _fat.Middle;

    internal double NetMiddle => _alkali.Middle - _acid.Middle;

    internal double BestEstimate => 1 - (NetMiddle / _fat.Middle);

    /// <summary>The corner of least superfat: most alkali, least acid, least fat, unless the acids take up everything.</summary>
    internal double Worst => Corner(_alkali.High - _acid.Low, _fat.Low, _fat.High);

    internal double Best => Corner(_alkali.Low - _acid.High, _fat.High, _fat.Low);

    private static double Corner(double net, double fat, double fatIfNegative) => 1 - (net / Math.Max(net >= 0 ? fat : fatIfNegative, LyeBalance.LeastDemand));

    private void Fats(Formula formula, double error)
    {
        for (int i = 0; i < formula.Fats.Count; i++)
        {
            FatPortion portion = formula.Fats[i];
            FormulaPath path = FormulaPath.Fats.Item(i, portion.Line);
            if (portion.Fat.Saponification is null || portion.Grams <= 0)
                continue;
            FatPart part = PartOf(portion.Fat, path);
            part.Add(portion.Grams, Math.Max(0, portion.Grams - error), portion.Grams + error);
            Add(path, MarginCauseKind.Weighing, "weighing of " + portion.Fat.Name, CauseOf.Fat, error * part.Middle);
        }
    }

    /// <summary>Liquids and additives: their fat counts with the saponification value of that fat, their acid by itself.</summary>
    private void Others(BatchPlan plan, double error)
    {
        foreach (Containing item in Containing.All(plan))
        {
            Contents contents = item.Contents;
            bool fat = contents.FatHydroxidePerGram > 0, acid = contents.AcidHydroxidePerGram > 0;
            if (item.Grams <= 0 || (!fat && !acid))
                continue;
            double low = Math.Max(0, item.Grams - error), high = item.Grams + error;
            if (fat)
            {
                FatPart part = PartOf(contents.FatKind!, item.Path);
                (double least, double middle, double most) = Range(contents.LeastFat, contents.FatFraction, contents.MostFat);
                part.Add(item.Grams * middle, low * least, high * most);
                Add(item.Path, MarginCauseKind.Composition, "fat content of " + item.Name, CauseOf.Fat, item.Grams * (most - least) / 2 * part.Middle);
                Add(item.Path, MarginCauseKind.Weighing, "weighing of " + item.Name, CauseOf.Fat, error * middle * part.Middle);
            }
            if (acid)
            {
                (double least, double middle, double most) = Range(contents.LeastAcid, contents.AcidFraction, contents.MostAcid);
                double perGram = contents.AcidKind!.HydroxidePerGram;
                _acid = (_acid.Low + (low * least * perGram), _acid.Middle + (item.Grams * middle * perGram), _acid.High + (high * most * perGram));
                Add(item.Path, MarginCauseKind.Composition, "acid content of " + item.Name, CauseOf.Acid, item.Grams * (most - least) / 2 * perGram);
                Add(item.Path, MarginCauseKind.Weighing, "weighing of " + item.Name, CauseOf.Acid, error * middle * perGram);
            }
            // a pure acid's share follows from its formula; that of a milk is a mean over cows
            if ((fat && contents.LeastFat is null) || (acid && contents.LeastAcid is null && contents.AcidFraction < 0.5))
                _noData.Add("composition of " + item.Name);
        }
    }

    private void Alkalis(BatchPlan plan, double error)
    {
        foreach (AlkaliPortion portion in plan.Alkalis)
        {
            Purity purity = portion.Alkali.Purity;
            double molar = Molar.Hydroxide(portion.Alkali.Kind), middle = (purity.LowFraction + purity.HighFraction) / 2;
            FormulaPath path = FormulaPath.Alkali.Member("alkalis").Item(plan.Alkalis.AsSpan().IndexOf(portion), portion.Line);
            _alkali = (
                _alkali.Low + (Math.Max(0, portion.Grams - error) * purity.LowFraction / molar),
                _alkali.Middle + (portion.Grams * middle / molar),
                _alkali.High + ((portion.Grams + error) * purity.HighFraction / molar));
            Add(path, MarginCauseKind.Purity, "purity of the " + Name(portion.Alkali), CauseOf.Alkali, portion.Grams * (purity.HighFraction - purity.LowFraction) / 2 / molar);
            Add(path, MarginCauseKind.Weighing, "weighing of the " + Name(portion.Alkali), CauseOf.Alkali, error * middle / molar);
        }
    }

    private void Close(FatPart part)
    {
        _fat = (_fat.Low + (part.LowGrams * part.Low), _fat.Middle + (part.Grams * part.Middle), _fat.High + (part.HighGrams * part.High));
        if (part.IsSingleSample)
            _noData.Add("saponification value of " + part.Name);
        Add(part.Path, MarginCauseKind.SaponificationValue, "saponification value of " + part.Name, CauseOf.Fat, part.Grams * (part.High - part.Low) / 2);
    }

    private FatPart PartOf(Fat fat, FormulaPath path)
    {
        if (!_fats.TryGetValue(fat, out FatPart? part))
            _fats[fat] = part = new(fat, path);
        return part;
    }

    private void Add(FormulaPath path, MarginCauseKind kind, string what, CauseOf of, double halfWidth)
    {
        if (halfWidth > 0)
            _causes.Add(new(path, kind, what, of, halfWidth));
    }

    private static (double Least, double Middle, double Most) Range(UnitsNet.Ratio? least, double value, UnitsNet.Ratio? most)
    {
        double low = least?.DecimalFractions ?? value, high = most?.DecimalFractions ?? value;
        return (low, (low + high) / 2, high);
    }

    private static string Name(Alkali alkali) => alkali.Kind == AlkaliKind.SodiumHydroxide ? "sodium hydroxide" : "potassium hydroxide";

    /// <summary>One fat wherever it comes in: grams of it in all, and its saponification value in mol per gram.</summary>
    private sealed class FatPart(Fat fat, FormulaPath path)
    {
        private readonly Figure<SaponificationValue> _figure = fat.Saponification!;

        internal FormulaPath Path => path;

        internal string Name => fat.Name;

        internal double Low => (_figure.Low ?? _figure.Value).MolPerGram;

        internal double High => (_figure.High ?? _figure.Value).MolPerGram;

        internal double Middle => (Low + High) / 2;

        /// <summary>One analysis shows no spread: that is not certainty, unless it is the lot's own.</summary>
        internal bool IsSingleSample => !_figure.IsOwn && fat.Class != FatClass.Wax && Low == High;

        internal double Grams { get; private set; }

        internal double LowGrams { get; private set; }

        internal double HighGrams { get; private set; }

        internal void Add(double grams, double low, double high) => (Grams, LowGrams, HighGrams) = (Grams + grams, LowGrams + low, HighGrams + high);
    }

    /// <summary>Fats are compared by reference first, which settles nearly every case.</summary>
    private sealed class ReferenceOrEqual : IEqualityComparer<Fat>
    {
        internal static readonly ReferenceOrEqual Instance = new();

        public bool Equals(Fat? x, Fat? y) => ReferenceEquals(x, y) || (x is not null && x.Equals(y));

        public int GetHashCode(Fat obj) => StringComparer.Ordinal.GetHashCode(obj.Id);
    }
}
