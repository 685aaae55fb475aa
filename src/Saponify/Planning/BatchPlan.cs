using Microsoft.DotNet.Interactive.Formatting;
using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>
/// What to weigh, what comes out of it, and how it was reached. Made by <c>formula.Plan()</c>, which never throws: what stands in the way
/// is in <see cref="Obstacles"/>, and then nothing is offered to weigh. Immutable, thread-safe. The tables are made when first asked for.
/// </summary>
[TypeFormatterSource(typeof(NotebookFormatters), PreferredMimeTypes = [NotebookFormatters.Html])]
public sealed class BatchPlan : IShownAsHtml
{
    private readonly bool _ruleCanBeMet;
    private AlkaliPortion[]? _alkalis;
    private AdditivePortion[]? _additives;
    private LyeUptake[]? _uptake;
    private PossibleUptake[]? _possible;
    private WaterShare[]? _water;
    private LiquidWindow? _window;

    internal BatchPlan(Formula formula)
    {
        Formula = formula;
        LyeSolver solver = new(formula);
        Balance = solver.Solve(out _ruleCanBeMet);
    }

    /// <summary>The formula that was planned.</summary>
    public Formula Formula { get; }

    /// <summary>The numbers: superfats, lye strengths, masses.</summary>
    public LyeBalance Balance { get; }

    /// <summary>What stands in the way of weighing this batch; empty when nothing does.</summary>
    public ValueList<Obstacle> Obstacles => Balance.CanBeWeighed ? default : Obstacle.Of(Formula, Balance, _ruleCanBeMet);

    /// <summary>The alkalis to weigh, impurity and solution water included; empty with obstacles. Printed and on a scale they are cut, never rounded up.</summary>
    public ValueList<AlkaliPortion> Alkalis => Balance.CanBeWeighed ? new(_alkalis ??= PlanTables.Alkalis(this)) : default;

    /// <summary>The liquid to dissolve the alkali in; null with obstacles, or when a bought solution needs none.</summary>
    public LiquidPortion? LyeLiquid => Balance.CanBeWeighed && Balance.LyeLiquidGrams > 0 ? PlanTables.LyeLiquid(this) : null;

    /// <summary>The additives with their masses, percent doses worked out; an unknown amount stays unknown. With obstacles as they stand in the formula.</summary>
    public ValueList<AdditivePortion> Additives => Balance.CanBeWeighed ? new(_additives ??= PlanTables.Additives(Formula)) : Formula.Additives;

    /// <summary>Who takes up lye. Fats, late fats, fat in liquids and additives, acids, less the superfat: adds up to the alkali supplied.</summary>
    public ValueList<LyeUptake> LyeUptake => new(_uptake ??= PlanTables.LyeUptake(this));

    /// <summary>What may take up lye and is not counted; more uptake than planned means a higher superfat.</summary>
    public ValueList<PossibleUptake> PossibleUptake => new(_possible ??= PlanTables.PossibleUptake(this));

    /// <summary>Where the water comes from; adds up to all water.</summary>
    public ValueList<WaterShare> Water => new(_water ??= PlanTables.Water(this));

    /// <summary>How much lye liquid the maker may choose.</summary>
    public LiquidWindow LiquidWindow => _window ??= PlanTables.Window(Formula);

    /// <summary>Mass of everything that goes in, equal to the batter before anything evaporates.</summary>
    public Mass BatchMass => Balance.BatchMass;

    /// <summary>
    /// True when the alkali exceeds what the listed fats take up, so that the bar is safe only by the fat of a liquid or an additive, which
    /// varies from carton to carton and which nobody weighed as fat.
    /// </summary>
    public bool IsSafeOnlyByUnlistedFat => Balance is { OfAllFat: >= 0, OfListedFats: < 0 };

    /// <summary>Weakest evidence among the saponification values that the alkali rests on; null when no listed fat has one.</summary>
    public Evidence? Evidence
    {
        get
        {
            Evidence? weakest = null;
            foreach (FatPortion portion in Formula.Fats)
            {
                if (portion.Fat.Saponification is { } figure && !(weakest >= figure.Evidence))
                    weakest = figure.Evidence;
            }
            return weakest;
        }
    }

    /// <summary>The plan as text for people, by vessel, in the formula's own units; invariant.</summary>
    public override string ToString() => PlanText.Of(this, null, new TextSheet());

    /// <summary>The plan as text for people, all masses in one unit; invariant.</summary>
    /// <param name="unit">Gram, kilogram, milligram, ounce or pound.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another unit.</exception>
    public string ToText(MassUnit unit) => UnitTable.Name(UnitTable.Mass, unit) is not null
        ? PlanText.Of(this, unit, new TextSheet())
        : throw new ArgumentOutOfRangeException(nameof(unit), unit, "A plan is printed in grams, kilograms, milligrams, ounces or pounds.");

    /// <summary>The same as a fragment of HTML, without script, every text escaped; notebooks show it by themselves.</summary>
    public string ToHtml() => PlanText.Of(this, null, new HtmlSheet());

    internal bool WaterRuleCanBeMet => _ruleCanBeMet;

    internal double GramsAsAlkali(double hydroxide) => hydroxide * Formula.Alkali.Mix.WeighedPerMole;
}
