using FsCheck;
using FsCheck.Fluent;
using Saponify.Tests.Support;

namespace Saponify.Tests.Planning;

/// <summary>Laws of the weighed batch.</summary>
public class WeighedBatchLaws
{
    /// <summary>A batch some of whose lines are weighed, up to 15 % off, alkali in or not.</summary>
    private static readonly Gen<WeighedBatch> s_batches =
        from formula in Any.SoundFormulas
        from seed in Gen.Choose(0, int.MaxValue)
        from state in Gen.Choose(0, 1)
        select Weigh(formula.Plan(), new Random(seed), state == 1);

    [Law]
    public Property AllLinesAtPlan_GiveThePlan() => Prop.ForAll(Any.SoundFormulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        if (!plan.Balance.CanBeWeighed)
            return true;
        WeighedBatch batch = WeighedBatch.Start(plan);
        foreach (WeighedLine line in batch.Lines)
            batch = batch.Weigh(line.Path.ToString(), line.Planned);
        return Near.Is(batch.Superfat, plan.Balance.SuperfatOfAllFat) && Near.Is(batch.SuperfatIfTheRestNeverComes, plan.Balance.SuperfatOfAllFat)
            && Near.Is(batch.Balance.BatchMass.Grams, plan.BatchMass.Grams) && batch.Missing.Count == 0 && batch.AlkaliToWeigh.Count == 0 && batch.LiquidToWeigh is null;
    });

    [Law]
    public Property AnyChoice_ReachesWhatItPromises() => Prop.ForAll(s_batches.Where(b => b is not null).Arbitrary(), batch => batch.Choices.All(choice =>
    {
        WeighedBatch after = choice.Apply();
        // weighing what was added or weighed anew at its planned mass gives the superfat that was promised
        foreach (WeighedLine line in after.Missing)
            after = after.Weigh(line.Path.ToString(), line.Planned);
        bool kept = Near.Is(after.Superfat, choice.Superfat);
        bool reached = choice.Kind is BatchChoiceKind.Accept or BatchChoiceKind.Discard || Near.Is(Wanted(batch, after), batch.Target!.Value, 1e-7);
        return kept && reached;
    }));

    [Law]
    public Property TheAlkaliToWeighNow_GivesTheSuperfatWanted() => Prop.ForAll(s_batches.Where(b => b is { State: BatchState.Weighing }).Arbitrary(), batch =>
    {
        if (batch.AlkaliToWeigh.Count == 0 || batch.AlkaliToWeigh.All(a => a.Mass.Grams == 0))
            return true;
        WeighedBatch after = batch;
        foreach (AlkaliPortion alkali in batch.AlkaliToWeigh)
            after = after.Weigh($"alkali.alkalis[{alkali.Line}]", alkali.Mass);
        return Near.Is(Wanted(batch, after), batch.Target!.Value, 1e-7);
    });

    [Law]
    public Property OnceTheAlkaliIsIn_NothingOfferedTakesAnythingOut() => Prop.ForAll(s_batches.Where(b => b is { State: BatchState.Mixed }).Arbitrary(), batch => batch.Choices.All(choice =>
    {
        Formula before = batch.AsWeighed, after = choice.Apply().AsWeighed;
        return before.Fats.All(f => after.Fats.Any(g => g.Line == f.Line && g.Mass.Grams >= f.Mass.Grams))
            && ((WeighedAlkali)before.Alkali).Alkalis.All(a => ((WeighedAlkali)after.Alkali).Alkalis.Any(b => b.Line == a.Line && b.Mass.Grams >= a.Mass.Grams));
    }));

    /// <summary>Whatever the steps of the scales, what they cut is on the side of less lye.</summary>
    [Law]
    public Property OnAScale_TheSuperfatNeverComesOutLower() => Prop.ForAll(s_batches.Where(b => b is not null).Arbitrary(), Gen.Elements(0.01, 0.5, 1, 5, 20).Two().ToArbitrary(), (batch, steps) =>
        batch.ChoicesOn(new(Mass.FromGrams(steps.Item1)), new(Mass.FromGrams(steps.Item2))).All(choice =>
        {
            BatchChoice exact = batch.Choices.Single(c => c.Kind == choice.Kind && c.Fat == choice.Fat);
            double step = choice.Kind == BatchChoiceKind.AddFat ? steps.Item1 : steps.Item2;
            bool whole = choice.Kind is not (BatchChoiceKind.AddFat or BatchChoiceKind.WeighAlkali) || choice.Apply().Missing.All(l => Math.Abs((l.PlannedGrams / step) - Math.Round(l.PlannedGrams / step)) < 1e-6 || !IsNew(batch, l));
            return whole && (choice.Superfat is null || choice.Superfat >= exact.Superfat!.Value - Ratio.FromPercent(1e-7));
        }));

    /// <summary>True when a choice put the line on the list, or gave it another mass.</summary>
    private static bool IsNew(WeighedBatch before, WeighedLine line) => before.Lines.All(l => l.Path.ToString() != line.Path.ToString() || l.PlannedGrams != line.PlannedGrams);

    private static double Wanted(WeighedBatch batch, WeighedBatch after) =>
        (batch.Basis == SuperfatBasis.AllFat ? after.Balance.SuperfatOfAllFat : after.Balance.SuperfatOfListedFats)!.Value.DecimalFractions;

    private static WeighedBatch Weigh(BatchPlan plan, Random random, bool mixed)
    {
        if (!plan.Balance.CanBeWeighed)
            return null!;
        WeighedBatch batch = WeighedBatch.Start(plan);
        foreach (WeighedLine line in batch.Lines)
        {
            if (random.Next(3) > 0)
                batch = batch.Weigh(line.Path.ToString(), line.Planned * (0.85 + (0.3 * random.NextDouble())));
        }
        return mixed ? batch.WithAlkaliIn() : batch;
    }
}
