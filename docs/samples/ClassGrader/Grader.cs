using Saponify;
using UnitsNet;

namespace ClassGrader;

/// <summary>Marks the answers of a class to "how much sodium hydroxide?" and names the slip behind a wrong one where a known slip gives that number.</summary>
public sealed class Grader
{
    private readonly Formula _exercise;
    private readonly SuperfatTarget _target;
    private readonly double _right, _tolerance;
    private readonly (string Slip, double Grams)[] _slips;

    /// <param name="exercise">One alkali, sodium hydroxide, solved for a superfat.</param>
    /// <param name="tolerance">Largest relative error of a right answer.</param>
    public Grader(Formula exercise, double tolerance = 0.005)
    {
        (_exercise, _tolerance) = (exercise, tolerance);
        _target = exercise.Alkali as SuperfatTarget ?? throw new ArgumentException("The exercise has to ask for a superfat.", nameof(exercise));
        _right = Needed(exercise);
        double superfat = _target.Superfat.DecimalFractions, naohPerKoh = 39.997 / 56.105;
        _slips =
        [
            ("the purity was forgotten", Needed(With(_target.Superfat, Alkali.SodiumHydroxide(Ratio.FromPercent(100))))),
            ("the superfat was forgotten", Needed(With(Ratio.Zero, _target.Alkalis[0].Alkali))),
            ("the superfat was added to the alkali, not taken off", _right / (1 - superfat) * (1 + superfat)),
            ("saponification values in KOH were not turned into NaOH", _right / naohPerKoh),
            ("values in NaOH were turned into NaOH once more", _right * naohPerKoh),
        ];
    }

    /// <summary>What a right answer is, in grams as weighed.</summary>
    public double RightGrams => _right;

    /// <summary>One line for one answer: right or wrong, by how much, the bar it would make, and the likely slip.</summary>
    public string Mark(string who, double grams)
    {
        double off = (grams / _right) - 1;
        if (Math.Abs(off) <= _tolerance)
            return FormattableString.Invariant($"{who}: right ({grams:0.0} g)");
        double superfat = Superfat(grams);
        string bar = superfat < 0 ? FormattableString.Invariant($"LYE-HEAVY, superfat {100 * superfat:0.0} %: this bar would burn skin") : FormattableString.Invariant($"superfat {100 * superfat:0.0} %");
        string? slip = _slips.Where(s => Math.Abs((grams / s.Grams) - 1) <= _tolerance).OrderBy(s => Math.Abs(grams - s.Grams)).Select(s => s.Slip).FirstOrDefault();
        return FormattableString.Invariant($"{who}: {grams:0.0} g is {100 * Math.Abs(off):0.0} % {(off > 0 ? "too much" : "too little")}; {bar}") + (slip is null ? "" : "; it looks as if " + slip);
    }

    private static double Needed(Formula formula) => formula.Balance() is { CanBeWeighed: true } balance
        ? balance.AlkaliAsWeighed.Grams
        : throw new ArgumentException("The exercise has no answer: " + formula.Plan().Obstacles[0].Reason, nameof(formula));

    private Formula With(Ratio superfat, Alkali alkali) => _exercise with { Alkali = AlkaliPlan.ForSuperfat(superfat, alkali) };

    private double Superfat(double grams) =>
        (_exercise with { Alkali = AlkaliPlan.Weighed(_target.Alkalis[0].Alkali.Weighing(Mass.FromGrams(grams))) }).Balance().SuperfatOfAllFat!.Value.DecimalFractions;
}
