using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>
/// What temperatures to expect, in which order: fats warmed, alkali dissolved, lye cooled, held-back liquids joined, fats joined, late fats. Made by
/// <c>formula.Plan().Process(setup)</c>, which never throws on a formula. What was not given is in <see cref="Questions"/>, and what rests on it is null.
/// Immutable, thread-safe.
/// </summary>
public sealed class ProcessPlan
{
    private ProcessStep[]? _steps;

    internal ProcessPlan(BatchPlan plan, ProcessSetup setup)
    {
        Plan = plan;
        Setup = setup;
        List<ProcessQuestion> questions = [];
        Formula formula = plan.Formula;
        Fats = new([.. formula.Fats.Where(f => !f.IsLate)]);
        LateFats = new([.. formula.Fats.Where(f => f.IsLate)]);
        if (plan.Balance.CanBeWeighed)
        {
            Lye = MakeJug(questions)?.Dissolve();
            HeldBack = MakeHeldBack(questions);
            if (Fats.Fats.Count > 0 && setup.Fats is null)
                questions.Add(new(ProcessInput.Fats, FormulaPath.Fats, "the temperature of the fat pot, for the temperature in the pot and for which fats set"));
            if (setup.Lye is null && setup.Mixed is null)
                questions.Add(new(ProcessInput.Lye, FormulaPath.Root, "what the lye is cooled to, or the temperature wanted in the pot"));
            if (setup.Vessel is null)
                questions.Add(new(ProcessInput.Vessel, FormulaPath.Root, "the vessel, for the time to cool and for whether it stands the heat"));
            LyeTemperature = setup.Lye is { } given ? NoWarmer(given) : WantedLye();
            Cooling = MakeCooling();
        }
        Questions = questions.ToValueList();
    }

    /// <summary>The plan of what to weigh.</summary>
    public BatchPlan Plan { get; }

    /// <summary>The circumstances.</summary>
    public ProcessSetup Setup { get; }

    /// <summary>The lye; null with obstacles, or when a temperature it needs was not given.</summary>
    public LyeSolution? Lye { get; }

    /// <summary>The fats of the pot: how far to warm them.</summary>
    public FatHeating Fats { get; }

    /// <summary>The late fats: which of them to melt first.</summary>
    public FatHeating LateFats { get; }

    /// <summary>What the lye is cooled to: as given, but not above <see cref="HottestLye"/>; or what gives the temperature wanted in the pot. Null when neither is known or lye can't be so.</summary>
    public Temperature? LyeTemperature { get; }

    /// <summary>How the lye cools in the vessel; null without lye, vessel or surroundings, and where <see cref="Vessel.Cooling"/> tells nothing.</summary>
    public CoolingSpan? Cooling { get; }

    /// <summary>What was not given, and what it is needed for.</summary>
    public ValueList<ProcessQuestion> Questions { get; }

    /// <summary>Where cooling starts: the upper bound, or the boiling point if that is lower. Null without lye.</summary>
    public Temperature? HottestLye => Lye?.PeakCelsius is { } peak && Lye.Properties.BoilingCelsius is double boiling and > 0 ? Temperature.FromDegreesCelsius(Math.Min(peak, boiling)) : null;

    /// <summary>The time to cool the lye from <see cref="HottestLye"/> to <see cref="LyeTemperature"/>: an estimate. Null when it is not known, or never because the surroundings are no colder.</summary>
    public Figure<Duration>? CoolingTime => Cooling is { } cooling && HottestLye is { } start && LyeTemperature is { } wanted ? cooling.TimeTo(start, wanted) : null;

    /// <summary>The cooled lye with the held-back liquids; null without such liquids, when a temperature is missing, or when the lye is below -30 degrees Celsius.</summary>
    public Mixing? WithHeldBack => HeldBack is { Count: > 0 } liquids && Mix(liquids) is { } mixing ? mixing : null;

    /// <summary>The cooled lye, the held-back liquids and the fats of the pot; null when a temperature is missing, or when the lye is below -30 degrees Celsius.</summary>
    public Mixing? WithFats => HeldBack is { } liquids && Setup.Fats is { } fats && Mix(liquids) is { } mixing ? mixing with { Fats = Fats.Fats, FatTemperature = fats } : null;

    /// <summary>Which fats set in the pot, late ones included; empty when the temperature there is not known.</summary>
    public ValueList<FatSetting> Setting => WithFats?.MixedTemperature is { } temperature ? FatSetting.At(temperature, new([.. Plan.Formula.Fats.Where(f => f.Grams > 0)])) : [];

    /// <summary>What speaks against the vessel; empty when nothing does, or when vessel, lye or room is not known.</summary>
    public ValueList<VesselFinding> VesselFindings
    {
        get
        {
            if (Setup.Vessel is not { } vessel || Lye is null || Setup.Room is not { } room)
                return [];
            List<VesselFinding> found = [.. vessel.Check(Lye, room, Setup.LeastHeadspace)];
            if (Setup.Surroundings is { } bath && HottestLye is { } hot && vessel.CheckBath(hot, bath.Temperature) is { } shock && !found.Exists(f => f.Kind == VesselFindingKind.ThermalShock))
                found.Add(shock);
            return found.ToValueList();
        }
    }

    /// <summary>The steps in order; empty with obstacles.</summary>
    public ValueList<ProcessStep> Steps => Plan.Balance.CanBeWeighed ? new(_steps ??= new ProcessSteps(this).Make()) : default;

    /// <summary>The held-back liquids with their temperatures; null when one is missing.</summary>
    internal ValueList<LiquidPortion>? HeldBack { get; }

    /// <summary>Celsius or Fahrenheit: as in the circumstances, or else as in the formula.</summary>
    internal TemperatureUnit Unit
    {
        get
        {
            Temperature? first = Setup.Room ?? Setup.Water ?? Setup.Fats ?? Setup.Lye ?? Setup.Mixed ?? Setup.HeldBack ?? Plan.Formula.Liquids.LyeLiquid.Temperature
                ?? Plan.Formula.Liquids.HeldBack.FirstOrDefault(h => h.Temperature is not null)?.Temperature;
            return first?.Unit == TemperatureUnit.DegreeFahrenheit ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius;
        }
    }

    /// <summary>The plan as text for people, with a small plot; invariant.</summary>
    public override string ToString() => ProcessText.Of(this, null);

    internal Mixing? Mix(ValueList<LiquidPortion> liquids) =>
        Lye is { PeakCelsius: not null } lye && LyeTemperature is { } temperature && Mixing.LyeLimits.Holds(temperature.DegreesCelsius) ? new() { Lye = lye, LyeTemperature = temperature, Liquids = liquids } : null;

    private LyeJug? MakeJug(List<ProcessQuestion> questions)
    {
        Temperature? alkali = Setup.Alkali ?? Setup.Room;
        if (alkali is null)
            questions.Add(new(ProcessInput.Room, FormulaPath.Root, "the temperature of the room, for the alkali and for the time to cool"));
        ValueList<LiquidPortion> liquids = [];
        if (Plan.LyeLiquid is { } liquid)
        {
            if ((liquid.Temperature ?? Setup.Water) is not { } warm)
            {
                questions.Add(new(ProcessInput.Water, FormulaPath.LyeLiquid, $"the temperature of {liquid.Liquid.Name}, for the peak of the lye"));
                return null;
            }
            liquids = [liquid.IsFrozen ? liquid : liquid.At(warm)];
        }
        if (alkali is null)
            return null;
        LyeJug jug = new()
        {
            Alkalis = Plan.Alkalis,
            AlkaliTemperature = alkali.Value,
            Liquids = liquids,
            Additives = [.. Plan.Additives.Where(a => a.Stage == Stage.LyeLiquid)],
        };
        if (Setup.IceShare is not { DecimalFractions: > 0 } share)
            return jug;
        if (Setup.Ice is { } ice)
            return jug.WithIce(share, ice);
        questions.Add(new(ProcessInput.Ice, FormulaPath.Root, "how cold the ice is"));
        return null;
    }

    private ValueList<LiquidPortion>? MakeHeldBack(List<ProcessQuestion> questions)
    {
        ValueList<LiquidPortion> held = Plan.Formula.Liquids.HeldBack;
        List<LiquidPortion> warm = [];
        for (int i = 0; i < held.Count; i++)
        {
            if ((held[i].Temperature ?? Setup.HeldBack) is { } temperature)
                warm.Add(held[i].IsFrozen ? held[i] : held[i].At(temperature));
            else
                questions.Add(new(ProcessInput.HeldBack, FormulaPath.HeldBack.Item(i, held[i].Line), $"the temperature of {held[i].Liquid.Name}"));
        }
        return warm.Count == held.Count ? warm.ToValueList() : null;
    }

    private Temperature? WantedLye()
    {
        if (Setup.Mixed is not { } wanted || Setup.Fats is not { } fats || HeldBack is not { } liquids || Lye is not { PeakCelsius: not null } lye)
            return null;
        Mixing mixing = new() { Lye = lye, LyeTemperature = wanted, Liquids = liquids, Fats = Fats.Fats, FatTemperature = fats };
        return mixing.LyeTemperatureFor(wanted) is { } temperature && temperature.DegreesCelsius >= 0 && temperature.DegreesCelsius <= HottestLye!.Value.DegreesCelsius ? temperature : null;
    }

    /// <summary>Lye that never gets so warm joins as warm as it gets at the most.</summary>
    private Temperature NoWarmer(Temperature wanted) => HottestLye is { } hottest && hottest.DegreesCelsius < wanted.DegreesCelsius ? hottest : wanted;

    private CoolingSpan? MakeCooling()
    {
        Surroundings? surroundings = Setup.Surroundings ?? (Setup.Room is { } room ? Surroundings.StillAir(room) : null);
        return Lye is { } lye && Setup.Vessel is { } vessel && surroundings is not null ? vessel.Cooling(lye, surroundings) : null;
    }
}
