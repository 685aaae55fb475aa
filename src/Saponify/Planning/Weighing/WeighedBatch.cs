using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// A batch on the bench: the plan, and what was really weighed, line by line, in any order. At any moment it says the superfat so far, what
/// alkali and liquid to weigh now, and what can be done. Lines not yet weighed stand in at plan. Immutable, thread-safe; equality by content.
/// </summary>
public sealed record WeighedBatch
{
    private WeighedBatch(Formula formula, Formula planned, double? target, SuperfatBasis basis)
    {
        Formula = formula;
        Planned = planned;
        Target = target;
        Basis = basis;
    }

    /// <summary>The formula with every mass worked out when weighing began, and with what was added or found out since: what a line stands in at.</summary>
    internal Formula Planned { get; private init; }

    /// <summary>Superfat wanted, of <see cref="Basis"/>; null when the plan has none.</summary>
    internal double? Target { get; private init; }

    internal SuperfatBasis Basis { get; private init; }

    /// <summary>The formula that was planned.</summary>
    public Formula Formula { get; }

    /// <summary>How far the batch is.</summary>
    public BatchState State { get; private init; }

    /// <summary>What was weighed, in the order of weighing.</summary>
    public ValueList<Weight> Weights { get; private init; }

    /// <summary>A batch of which nothing is weighed yet.</summary>
    /// <param name="plan">The plan to weigh by.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    /// <exception cref="ArgumentException">The plan can't be weighed; its obstacles say why.</exception>
    public static WeighedBatch Start(BatchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (!plan.Balance.CanBeWeighed)
            throw new ArgumentException("A plan with obstacles can't be weighed: " + plan.Obstacles[0].Reason, nameof(plan));
        (double? target, SuperfatBasis basis) = plan.Formula.Alkali is SuperfatTarget wanted ? (wanted.SuperfatFraction, wanted.Basis) : (plan.Balance.OfAllFat, SuperfatBasis.AllFat);
        return new(plan.Formula, WorkedOut(plan), target, basis);
    }

    /// <summary>The batch with one line weighed; weighed again, the new mass counts.</summary>
    /// <param name="line">The line by its path, for example <c>fats[olive-oil]</c>; see <see cref="Lines"/>.</param>
    /// <param name="mass">What the scale showed, from 0 to 1e9 g.</param>
    /// <exception cref="ArgumentException">The batch has no such line; the message names the nearest.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mass outside its range, or not a number.</exception>
    public WeighedBatch Weigh(string line, Mass mass)
    {
        ArgumentNullException.ThrowIfNull(line);
        string[] known = [.. Lines.Select(l => l.Path.ToString())];
        if (!known.Contains(line, StringComparer.Ordinal))
            throw BatchLines.NoLine(line, known);
        return this with { Weights = [.. Weights.Where(w => w.Line != line), new Weight(line, mass)] };
    }

    /// <summary>The batch with a weight taken back; without effect when the line is not weighed.</summary>
    /// <param name="line">The line by its path.</param>
    public WeighedBatch Unweigh(string line) => this with { Weights = [.. Weights.Where(w => w.Line != line)] };

    /// <summary>The alkali is in.</summary>
    public WeighedBatch WithAlkaliIn() => In(BatchState.Mixed);

    /// <summary>The batch is poured.</summary>
    public WeighedBatch WhenPoured() => In(BatchState.Poured);

    internal WeighedBatch In(BatchState state) => this with { State = state };

    /// <summary>The batch with these weights, each of one of its lines.</summary>
    internal WeighedBatch Weighing(ValueList<Weight> weights) => this with { Weights = weights };

    /// <summary>Every line, with what was planned and what was weighed.</summary>
    public ValueList<WeighedLine> Lines => [.. BatchLines.Of(Planned).Select(l => new WeighedLine(l.Path, l.What, l.Grams, WeightOf(l.Path.ToString())))];

    /// <summary>The lines not weighed yet.</summary>
    public ValueList<WeighedLine> Missing => [.. Lines.Where(l => l.Weighed is null)];

    /// <summary>The formula as it is on the bench: weighed lines as weighed, the others at plan.</summary>
    public Formula AsWeighed => BatchLines.With(Planned, l => WeightOf(l)?.Mass);

    /// <summary>The numbers as it is on the bench.</summary>
    public LyeBalance Balance => AsWeighed.Balance();

    /// <summary>Superfat of all fat so far, lines not yet weighed standing in at plan; null without fat.</summary>
    public Ratio? Superfat => Balance.SuperfatOfAllFat;

    /// <summary>Superfat of all fat if the lines not weighed yet never come, apart from the alkali; null without fat.</summary>
    public Ratio? SuperfatIfTheRestNeverComes => BatchLines.With(Planned, l => WeightOf(l)?.Mass ?? (l.StartsWith("alkali", StringComparison.Ordinal) ? null : Mass.Zero)).Balance().SuperfatOfAllFat;

    /// <summary>True when more alkali is in it than acids and all fat can take up, lines not yet weighed standing in at plan.</summary>
    public bool IsLyeHeavy => Balance.OfAllFat is null or < 0;

    /// <summary>The alkali that the real weights ask for, as weighed; cut it to your scale. Alkalis weighed already stay as they are. Empty when none is left to weigh.</summary>
    public ValueList<AlkaliPortion> AlkaliToWeigh => State == BatchState.Weighing ? BatchAdvice.AlkaliToWeigh(this) : default;

    /// <summary>The lye liquid that the water rule asks for with the real weights; null when it is weighed already or none is needed.</summary>
    public LiquidPortion? LiquidToWeigh => State == BatchState.Weighing && WeightOf(BatchLines.LyeLiquid) is null ? BatchAdvice.LiquidToWeigh(this) : null;

    /// <summary>What can be done, each with its result; never to take out what is mixed.</summary>
    public ValueList<BatchChoice> Choices => new([.. BatchAdvice.Choices(this, null, null)]);

    /// <summary>The same in whole steps of a scale: alkali and lye cut, fat up, so that the superfat never comes out lower. Less alkali than a step is not offered.</summary>
    /// <param name="scale">The scale.</param>
    /// <param name="alkaliScale">Another scale for the alkali; null when it is weighed on <paramref name="scale"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="scale"/> is null.</exception>
    public ValueList<BatchChoice> ChoicesOn(Scale scale, Scale? alkaliScale = null)
    {
        ArgumentNullException.ThrowIfNull(scale);
        return new([.. BatchAdvice.Choices(this, Rounding.Of(scale), Rounding.Of(alkaliScale ?? scale))]);
    }

    /// <summary>The alkali was another one, or of another purity, than the plan said: its mass as weighed stays.</summary>
    /// <param name="line">The alkali's line, for example <c>alkali.alkalis[sodium-hydroxide]</c>.</param>
    /// <param name="actual">What it really was.</param>
    /// <exception cref="ArgumentException">No alkali stands on that line.</exception>
    public WeighedBatch AlkaliWas(string line, Alkali actual) => Found(Planned with { Alkali = BatchLines.Replace((WeighedAlkali)Planned.Alkali, line, actual) });

    /// <summary>Another fat than planned went in; its mass stays.</summary>
    /// <param name="line">The fat's line, for example <c>fats[olive-oil]</c>.</param>
    /// <param name="actual">What it really was.</param>
    /// <exception cref="ArgumentException">No fat stands on that line.</exception>
    public WeighedBatch FatWas(string line, Fat actual) => Found(Planned with { Fats = BatchLines.Replace(Planned.Fats, line, actual) });

    /// <summary>The alkali was dissolved in another liquid than planned; its mass stays.</summary>
    /// <param name="actual">What it really was.</param>
    /// <exception cref="ArgumentNullException"><paramref name="actual"/> is null.</exception>
    public WeighedBatch LyeLiquidWas(Liquid actual)
    {
        ArgumentNullException.ThrowIfNull(actual);
        return Found(Planned with { Liquids = Planned.Liquids.DissolvingIn(actual) });
    }

    /// <summary>A line went in twice.</summary>
    /// <param name="line">The line by its path.</param>
    /// <exception cref="ArgumentException">The batch has no such line.</exception>
    public WeighedBatch Doubled(string line)
    {
        ValueList<WeighedLine> lines = Lines;
        WeighedLine once = lines.FirstOrDefault(l => l.Path.ToString() == line) ?? throw BatchLines.NoLine(line, lines.Select(l => l.Path.ToString()));
        return Weigh(line, Mass.FromGrams(2 * (once.WeighedGrams ?? once.PlannedGrams)));
    }

    /// <summary>The batch on the bench for people: every line, the superfat so far, what to weigh now, what can be done; invariant.</summary>
    public override string ToString() => BatchText.Of(this, null, null);

    /// <summary>The same with what to weigh now, and what can be done, in whole steps of a scale.</summary>
    /// <param name="scale">The scale.</param>
    /// <param name="alkaliScale">Another scale for the alkali; null when it is weighed on <paramref name="scale"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="scale"/> is null.</exception>
    public string ToText(Scale scale, Scale? alkaliScale = null)
    {
        ArgumentNullException.ThrowIfNull(scale);
        return BatchText.Of(this, scale, alkaliScale ?? scale);
    }

    internal Weight? WeightOf(string line)
    {
        foreach (Weight weight in Weights)
        {
            if (weight.Line == line)
                return weight;
        }
        return null;
    }

    /// <summary>The batch with its worked-out formula changed: something was added, or turned out to be something else.</summary>
    internal WeighedBatch Found(Formula planned) => this with { Planned = planned };

    private static Formula WorkedOut(BatchPlan plan) => plan.Formula with
    {
        Alkali = AlkaliPlan.Weighed([.. plan.Alkalis]),
        Liquids = LiquidPlan.WeighedLyeLiquid(plan.LyeLiquid ?? new LiquidPortion(plan.Formula.Liquids.LyeLiquid.Liquid, Mass.Zero)).HoldingBack([.. plan.Formula.Liquids.HeldBack]),
        Additives = plan.Additives,
    };
}
