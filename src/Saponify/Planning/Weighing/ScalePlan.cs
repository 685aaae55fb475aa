using Microsoft.DotNet.Interactive.Formatting;
using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// A plan in the steps of a scale. Alkali is cut to a whole step, everything that takes up lye goes up to one, so that rounding never lowers
/// the superfat of all fat; the superfat is the one after rounding. Made by <c>plan.OnScale(scale)</c>. Immutable, thread-safe.
/// </summary>
[TypeFormatterSource(typeof(NotebookFormatters), PreferredMimeTypes = [NotebookFormatters.Html])]
public sealed class ScalePlan : IShownAsHtml
{
    private readonly PlanSheet _sheet;
    private readonly Scale _alkaliScale;

    internal ScalePlan(BatchPlan plan, Scale scale, Scale? alkaliScale)
    {
        Scale = scale;
        _alkaliScale = alkaliScale ?? scale;
        _sheet = new(plan, scale, alkaliScale);
        Balance = _sheet.Printed.Balance();
        (Lines, Obstacles) = Check();
    }

    /// <summary>The plan before rounding.</summary>
    public BatchPlan Plan => _sheet.Plan;

    /// <summary>The scale for everything but the alkali, if that has one of its own.</summary>
    public Scale Scale { get; }

    /// <summary>The formula with every mass in whole steps and the alkali as weighed.</summary>
    public Formula Formula => _sheet.Printed;

    /// <summary>The numbers after rounding.</summary>
    public LyeBalance Balance { get; }

    /// <summary>What to weigh; empty when the plan has obstacles.</summary>
    public ValueList<ScaleLine> Lines { get; }

    /// <summary>What the scale can't do: a line below its minimum load, an alkali of less than one step. The plan's own obstacles come first.</summary>
    public ValueList<Obstacle> Obstacles { get; }

    /// <summary>By how much one step of the alkali moves the superfat of all fat; null without fat.</summary>
    public Ratio? SuperfatPerAlkaliStep => Balance.AllFatHydroxide < LyeBalance.LeastDemand ? null
        : Stored.ToRatio(_alkaliScale.StepGrams / Plan.Formula.Alkali.Mix.WeighedPerMole / Balance.AllFatHydroxide);

    /// <summary>How much listed fat it takes for one step of the alkali to be worth no more than this; null without fat.</summary>
    /// <param name="superfat">What one step may be worth, from 0.001 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public Mass? ListedFatsFor(Ratio superfat)
    {
        double wanted = Stored.Fraction(superfat, 1e-5, 1, "What a step may be worth");
        return SuperfatPerAlkaliStep is { } now && Plan.Formula.ListedGrams > 0 ? Mass.FromGrams(Plan.Formula.ListedGrams * now.DecimalFractions / wanted) : null;
    }

    /// <summary>The plan as text for people, in the steps of the scale; invariant.</summary>
    public override string ToString() => PlanText.Of(_sheet, AboutTheScale(), new TextSheet());

    /// <summary>The same as a fragment of HTML, without script, every text escaped; notebooks show it by themselves.</summary>
    public string ToHtml() => PlanText.Of(_sheet, AboutTheScale(), new HtmlSheet());

    private IEnumerable<string> AboutTheScale()
    {
        if (SuperfatPerAlkaliStep is { } step)
        {
            yield return $"One step of the alkali's scale, {AmountWriter.Write(_alkaliScale.Step)}, is worth {Text.Fixed(step.Percent, 2)} points of superfat"
                + (ListedFatsFor(Ratio.FromPercent(0.5)) is { } fats && step.Percent > 0.5 ? $"; for half a point it takes {AmountWriter.Write(Rounding.Of(Scale).Up(fats.Grams))} of fats." : ".");
        }
        foreach (Obstacle obstacle in Obstacles)
            yield return obstacle.ToString();
        foreach (ScaleLine line in Lines)
        {
            if (line.Loads > 1)
                yield return $"{line.What}: in {Text.Number(line.Loads)} loads, the scale carries {AmountWriter.Write(Scale.Capacity!.Value)}.";
        }
    }

    private (ValueList<ScaleLine>, ValueList<Obstacle>) Check()
    {
        if (!Plan.Balance.CanBeWeighed)
            return (default, Plan.Obstacles);
        List<ScaleLine> lines = [];
        List<Obstacle> faults = [];
        foreach ((FormulaPath path, string what, Mass mass, double planned, bool alkali) in Weighings())
        {
            Scale scale = alkali ? _alkaliScale : Scale;
            double grams = Stored.Grams(mass, "A mass");
            if (planned <= 0)
                continue;
            // alkali that was weighed stays as it is, and is less than a step for all that
            if (grams <= 0 || (alkali && planned < scale.StepGrams * (1 - 1e-9)))
                faults.Add(new(path, $"{what}: {Text.Number(planned)} g is less than one step of {AmountWriter.Write(scale.Step)}; use a finer scale or make a larger batch."));
            else if (grams < scale.MinimumGrams)
                faults.Add(new(path, $"{what}: {AmountWriter.Write(mass)} is below the minimum load of {AmountWriter.Write(scale.MinimumLoad!.Value)}; use a finer scale or make a larger batch."));
            lines.Add(new(path, what, mass, planned, (int)Math.Min(1e6, Math.Ceiling(grams / scale.CapacityGrams * (1 - 1e-12))) is > 1 and int loads ? loads : 1));
        }
        return (lines.ToValueList(), faults.ToValueList());
    }

    private IEnumerable<(FormulaPath Path, string What, Mass Mass, double Planned, bool Alkali)> Weighings()
    {
        Formula planned = Plan.Formula, rounded = _sheet.Printed;
        for (int i = 0; i < planned.Fats.Count; i++)
            yield return (FormulaPath.Fats.Item(i, planned.Fats[i].Line), planned.Fats[i].Fat.Name, rounded.Fats[i].Mass, planned.Fats[i].Grams, false);
        ValueList<AlkaliPortion> alkalis = ((WeighedAlkali)rounded.Alkali).Alkalis;
        for (int i = 0; i < alkalis.Count; i++)
            yield return (FormulaPath.Alkali.Member("alkalis").Item(i, alkalis[i].Line), alkalis[i].Alkali.ToString(), alkalis[i].Mass, Plan.Alkalis[i].Grams, true);
        if (Plan.LyeLiquid is { } lye)
            yield return (FormulaPath.LyeLiquid, lye.Liquid.Name, rounded.Liquids.Weighed!.Mass, lye.Grams, false);
        for (int i = 0; i < planned.Liquids.HeldBack.Count; i++)
            yield return (FormulaPath.HeldBack.Item(i, planned.Liquids.HeldBack[i].Line), planned.Liquids.HeldBack[i].Liquid.Name, rounded.Liquids.HeldBack[i].Mass, planned.Liquids.HeldBack[i].Grams, false);
        for (int i = 0; i < planned.Additives.Count; i++)
        {
            if (rounded.Additives[i].Mass is { } mass)
                yield return (FormulaPath.Additives.Item(i, planned.Additives[i].Line), planned.Additives[i].Additive.Name, mass, planned.Additives[i].GramsFor(planned.ListedGrams), false);
        }
    }
}
