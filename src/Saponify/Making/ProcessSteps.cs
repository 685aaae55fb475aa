using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>The steps of a process plan, with their words. Bounds are called bounds and estimates estimates.</summary>
internal sealed class ProcessSteps(ProcessPlan plan)
{
    /// <summary>Water that meets hotter fat boils up at once: no such fat is advised.</summary>
    private const double SteamCelsius = 100;

    private readonly LyeSolution? _lye = plan.Lye;
    private readonly ProcessSetup _setup = plan.Setup;

    internal ProcessStep[] Make()
    {
        List<ProcessStep> steps = [];
        if (plan.Fats.Fats.Count > 0)
            steps.Add(WarmFats());
        steps.Add(Dissolve());
        steps.Add(Cool());
        if (plan.Plan.Formula.Liquids.HeldBack.Count > 0)
            steps.Add(JoinHeldBack());
        if (plan.Fats.Fats.Count > 0)
            steps.Add(JoinFats());
        if (plan.LateFats.Fats.Count > 0)
            steps.Add(AddLateFats());
        return [.. steps];
    }

    internal static bool Scorches(Liquid liquid) => liquid.Contents.SugarFraction + liquid.Contents.ProteinFraction > 0;

    private string Show(Temperature temperature) => ProcessText.Show(temperature, plan.Unit);

    /// <summary>A difference, rounded up to a whole degree.</summary>
    private string Step(TemperatureDelta delta)
    {
        double factor = plan.Unit == TemperatureUnit.DegreeFahrenheit ? 1.8 : 1;
        return $"{Text.Number(Math.Max(1, Math.Ceiling((delta.Kelvins * factor) - 1e-9)))} {UnitTable.Name(UnitTable.Temperature, plan.Unit)}";
    }

    private ProcessStep WarmFats()
    {
        List<string> notes = [];
        FatHeating fats = plan.Fats;
        if (fats.ClearFrom is { } clear)
            notes.Add($"{fats.DecidedBy!.Name} is clear from {Show(clear)} on{Remembered(fats.DecidedBy.Figures.Melting!.Evidence)}; warm the pot to that at least, then let it come to the temperature wanted.");
        if (fats.WithoutFigure.Count > 0)
            notes.Add($"No melting range is on file for {string.Join(", ", fats.WithoutFigure.Select(f => f.Name).Distinct(StringComparer.Ordinal))}: look at the pot.");
        if (_setup.Room is { } room && fats.ClearFrom is { } to && room.DegreesCelsius < to.DegreesCelsius && to.DegreesCelsius <= FatHeating.Warmest)
        {
            Figure<Energy> heat = fats.HeatFor(room, to);
            notes.Add($"That takes {Text.Number(Math.Round(heat.Low!.Value.Kilojoules))} to {Text.Number(Math.Round(heat.High!.Value.Kilojoules))} kJ from {Show(room)} (estimate).");
        }
        if (_setup.Fats is { } given && fats.ClearFrom is { } needed && given.DegreesCelsius < needed.DegreesCelsius)
            notes.Add($"At {Show(given)} {fats.DecidedBy!.Name} may already set.");
        return new(ProcessStepKind.WarmFats, "Warm the fats until they are clear", fats.ClearFrom, Claim.Estimate, notes.ToValueList());
    }

    private ProcessStep Dissolve()
    {
        List<string> notes = [];
        bool isBought = plan.Plan.Formula.Alkali.Mix.IsAllSolution;
        string what = isBought ? "Dilute the bought lye" : "Stir the alkali into the liquid, a little at a time";
        if (_lye is null)
            return new(ProcessStepKind.DissolveAlkali, what, null, Claim.UpperBound, default);
        LyeProperties properties = _lye.Properties;
        string strength = $"Lye of {Text.Fixed(properties.StrengthFraction * 100, 1)} %";
        if (_lye.Peak is not { } peak)
        {
            notes.Add($"{strength}: there are no figures beyond {Text.Number(LyeFits.Strongest * 100)} %, so its heat can't be told. Expect it to boil; take more liquid.");
        }
        else
        {
            string both = properties.IsEstimate ? " Figures of lye of both alkalis are the mean of the pure ones: an estimate." : "";
            string remembered = properties.HeatOfSolution!.Evidence == Evidence.Memory && properties.SodiumFraction < 1 ? " Part of the heat of KOH is from memory." : "";
            notes.Add($"{strength}. {(_lye.HasSugar ? "The figure" : "The bound")} leaves out what jug, room and steam take; its data are good to {Step(_lye.PeakError!.Value)}.{both}{remembered}");
            if (_lye.HasSugar)
                notes.Add("Sugar in lye browns and gives heat that nobody has measured: with milk, juice or honey in the jug the peak may lie higher.");
            if (_lye.AlcoholGrams > 0)
                notes.Add($"The alcohol in it boils from {Show(Temperature.FromDegreesCelsius(78))} on and foams over: drive it off beforehand (common practice, no source).");
            if (_lye.FlakesCelsius < _lye.PeakCelsius - 0.5)
                notes.Add($"Flakes with bound water give less heat: expect {Show(_lye.PeakOfHydrate!.Value)} at most. The bound takes them as dry.");
            Temperature boiling = properties.BoilingPoint!.Value;
            notes.Add(_lye.MayBoil == true
                ? $"IT MAY BOIL: it boils at {Show(boiling)}. Take colder or more liquid, or ice."
                : $"It boils at {Show(boiling)}{(isBought ? "" : "; it may sizzle where the alkali lies, so keep stirring")}.");
            if (_lye.Jug.Liquids.Any(l => l.IsFrozen))
            {
                notes.Add($"The ice takes {Text.Number(Math.Round(_lye.HeatTakenByIce.Kilojoules))} kJ of the {Text.Number(Math.Round(_lye.HeatReleased!.Value.Kilojoules))} kJ released."
                    + (_lye.IceLeft.Grams > 0 ? $" {Text.Number(_lye.IceLeft.Grams)} g of it do not melt." : ""));
            }
            if (_setup.MilkLimit is { } limit && peak.DegreesCelsius > limit.DegreesCelsius && _lye.Jug.Liquids.Any(l => Scorches(l.Liquid)))
                notes.Add($"That is above your limit of {Show(limit)} for milk and sugar: dissolve in plain water and hold this liquid back, or freeze it and stir the alkali in slowly over a bath.");
        }
        if (properties.CrystallisesBelow is { } crystals)
        {
            notes.Add(crystals.Low is null ? $"It stays clear down to {Show(crystals.High!.Value)} at least." : $"It may drop crystals below {Show(crystals.Value)}.");
        }
        notes.AddRange(plan.VesselFindings.Select(f => f.ToText(plan.Unit)));
        return new(ProcessStepKind.DissolveAlkali, what, _lye.Peak, _lye.HasSugar ? Claim.Estimate : Claim.UpperBound, notes.ToValueList());
    }

    private ProcessStep Cool()
    {
        const string What = "Let the lye cool";
        if (plan.LyeTemperature is not { } wanted)
        {
            ValueList<string> reason = _setup.Mixed is { } pot && _setup.Fats is not null && _lye is not null && plan.HeldBack is not null
                ? [$"No lye temperature gives {Show(pot)} in the pot: warm or cool the fats instead."] : default;
            return new(ProcessStepKind.CoolLye, What, null, Claim.Estimate, reason);
        }
        List<string> notes = [];
        Claim claim = _setup.Lye is { } given && given.DegreesCelsius <= wanted.DegreesCelsius ? Claim.Given : Claim.Estimate;
        if (_setup.Lye is null)
            notes.Add($"That gives {Show(_setup.Mixed!.Value)} in the pot (estimate).");
        if (_lye is null)
            return new(ProcessStepKind.CoolLye, What, wanted, claim, notes.ToValueList());
        if (_lye.IsClearAt(wanted) == false)
            notes.Add("So cool it may drop crystals.");
        if (plan.HottestLye is { } start && start.DegreesCelsius <= wanted.DegreesCelsius)
            notes.Add("It never gets warmer than that by itself; what follows is reckoned with it.");
        else if (plan.CoolingTime is not null)
            notes.Add($"Counted from the peak above, in {Where()}: heat transfer {Text.Number(Used().LeastTransfer)} to {Text.Number(Used().MostTransfer)} W/(m² K){(Used().Evidence == Evidence.Memory ? " (memory)" : "")}. Two readings of your own tell more.");
        else if (plan.Cooling is not null)
            notes.Add($"It never gets there in {Where()} of {Show(Used().Temperature)}.");
        if (_setup.Surroundings is { Celsius: <= 0 } && plan.HottestLye is { } hot && hot.DegreesCelsius > wanted.DegreesCelsius && _lye.HeatCapacity is { } capacity)
            notes.Add($"The bath melts {Text.Number(Math.Ceiling(Surroundings.IceFor(Energy.FromJoules(capacity.JoulesPerKelvin * (hot.DegreesCelsius - wanted.DegreesCelsius))).Grams / 10) * 10)} g of ice at the most.");
        if (MilkLye() is { } cooler)
            notes.Add(cooler);
        return new(ProcessStepKind.CoolLye, What, wanted, claim, notes.ToValueList(), plan.CoolingTime);
    }

    private Surroundings Used() => _setup.Surroundings ?? Surroundings.StillAir(_setup.Room!.Value);

    private string Where() => Used().Name;

    /// <summary>What keeps held-back milk below the limit, when the planned lye does not.</summary>
    private string? MilkLye()
    {
        if (_setup.MilkLimit is not { } limit || plan.WithHeldBack is not { } mixing || !(mixing.MixedTemperature?.DegreesCelsius > limit.DegreesCelsius) || !mixing.Liquids.Any(l => Scorches(l.Liquid)))
            return null;
        string colder = mixing.LyeTemperatureFor(limit) is { DegreesCelsius: >= 0 } lye ? $"cool the lye to {Show(lye)}" : "";
        string weaker = mixing.WaterFor(limit) is { } water ? $"put {Text.Number(Math.Ceiling(water.Grams))} g more water into the lye" : "";
        string way = string.Join(" or ", new[] { colder, weaker }.Where(w => w.Length > 0));
        return $"The held-back milk would pass your limit of {Show(limit)}: {(way.Length > 0 ? way : "freeze the milk or hold it back for the fats")}.";
    }

    private ProcessStep JoinHeldBack()
    {
        string names = string.Join(", ", plan.Plan.Formula.Liquids.HeldBack.Select(h => h.Liquid.Name + (h.IsFrozen ? " (frozen)" : "")));
        string what = $"Stir into the lye: {names}";
        if (plan.WithHeldBack is not { MixedTemperature: { } temperature } mixing)
            return new(ProcessStepKind.JoinHeldBack, what, null, Claim.Estimate, default);
        List<string> notes =
        [
            $"A plain mean would be {Show(mixing.PlainMean!.Value)}; diluting the lye to {Text.Fixed(mixing.StrengthAfter.DecimalFractions * 100, 1)} % gives {Text.Number(Math.Round(mixing.HeatOfDilution!.Value.Kilojoules, 1))} kJ more.",
        ];
        if (temperature.DegreesCelsius > plan.LyeTemperature!.Value.DegreesCelsius)
            notes.Add("It ends warmer than the lye was.");
        if (mixing.IceLeft.Grams > 0)
            notes.Add($"{Text.Number(mixing.IceLeft.Grams)} g of ice do not melt.");
        if (mixing.Liquids.Any(l => Scorches(l.Liquid)))
        {
            if (_setup.MilkLimit is { } limit && temperature.DegreesCelsius > limit.DegreesCelsius)
                notes.Add($"ABOVE your limit of {Show(limit)} for milk (common practice, no source).");
            notes.Add("Lye takes the fat and the sugar of milk at once: stir, keep it open, and go on without delay.");
        }
        return new(ProcessStepKind.JoinHeldBack, what, temperature, Claim.Estimate, notes.ToValueList());
    }

    private ProcessStep JoinFats()
    {
        const string What = "Pour the lye into the fats";
        if (plan.WithFats is not { MixedTemperature: { } temperature } mixing)
            return new(ProcessStepKind.JoinFats, What, null, Claim.Estimate, default);
        List<string> notes = [];
        foreach (FatSetting setting in mixing.Setting())
        {
            if (setting.Verdict is FatSettingVerdict.Sets or FatSettingVerdict.MaySet)
                notes.Add($"{setting.Portion.Fat.Name} {(setting.Verdict == FatSettingVerdict.Sets ? "sets" : "may set")} here (melts at {Range(setting.Melting!)}): a false trace. Warm to {Show(Temperature.FromDegreesCelsius(FatHeating.HighEnd(setting.Melting!)))}.");
        }
        if (_setup.Lye is not null && _setup.Mixed is { } wanted)
        {
            notes.Add(mixing.FatTemperatureFor(wanted) is { DegreesCelsius: > 0 and < SteamCelsius } fats
                ? $"For the {Show(wanted)} wanted the fats should have {Show(fats)}."
                : $"No fat temperature below {Show(Temperature.FromDegreesCelsius(SteamCelsius))} gives the {Show(wanted)} wanted.");
        }
        notes.Add("The reaction warms the pot further; that is not counted here.");
        return new(ProcessStepKind.JoinFats, What, temperature, Claim.Estimate, notes.ToValueList());
    }

    private ProcessStep AddLateFats()
    {
        List<string> notes = [];
        Temperature? room = _setup.Room;
        foreach (FatPortion portion in plan.LateFats.Fats)
        {
            if (portion.Fat.Figures.Melting is not { } melting)
                notes.Add($"{portion.Fat.Name}: no melting range is on file; if it is solid, melt it first.");
            else if (room is { } warm && warm.DegreesCelsius >= FatHeating.HighEnd(melting))
                notes.Add($"{portion.Fat.Name} is liquid at {Show(warm)}.");
            else
                notes.Add($"{portion.Fat.Name} melts at {Range(melting)}: melt it first, to {Show(Temperature.FromDegreesCelsius(FatHeating.HighEnd(melting)))} or more.");
        }
        return new(ProcessStepKind.AddLateFats, "At trace, stir in the late fats", plan.LateFats.ClearFrom, Claim.Estimate, notes.ToValueList());
    }

    private string Range(Figure<Temperature> melting) =>
        $"{ProcessText.Number(Temperature.FromDegreesCelsius(FatHeating.LowEnd(melting)), plan.Unit)} to {Show(Temperature.FromDegreesCelsius(FatHeating.HighEnd(melting)))}{Remembered(melting.Evidence)}";

    private static string Remembered(Evidence evidence) => evidence == Evidence.Memory ? ", from memory" : "";
}
