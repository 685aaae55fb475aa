using System.Text;
using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>Mould, bars, heat and cure of a plan as text for people. Plain characters, invariant.</summary>
internal sealed class MouldText
{
    private readonly StringBuilder _text = new();
    private readonly BatchPlan _plan;
    private readonly MouldJob _job;
    private readonly MassUnit _unit;

    private MouldText(BatchPlan plan, MouldJob job)
    {
        (_plan, _job) = (plan, job);
        MassUnit own = plan.Formula.Fats.Count > 0 ? plan.Formula.Fats[0].Mass.Unit : MassUnit.Gram;
        _unit = own is MassUnit.Ounce or MassUnit.Pound ? MassUnit.Ounce : MassUnit.Gram;
    }

    internal static string Of(BatchPlan plan, MouldJob job)
    {
        MouldText sheet = new(plan, job);
        sheet.Write();
        return sheet._text.ToString();
    }

    private void Write()
    {
        _text.Append(_plan.Formula.Name).Append(": mould, cut, cure\n");
        if (_plan.Obstacles.Count > 0)
        {
            Title("This batch can't be weighed");
            foreach (Obstacle obstacle in _plan.Obstacles)
                Line(obstacle.ToString());
            return;
        }
        Title("Mould");
        Line($"{_job.Mould}");
        Line($"holds {Text.Number(_job.Mould.Milliliters)} mL");
        if (_plan.Fill(_job.Mould, _job.Pour, _job.LeftInPot) is not { } fill)
        {
            Line("The lye is stronger than the 50 % that figures reach, so the volume of the batter can't be told.");
            return;
        }
        Batter(fill);
        Batch(fill);
        BarLayout bars = _job.Cut is { } cut ? _job.Mould.Cut(cut) : _job.Mould.Unmould(_job.Samples);
        Bars(fill, bars);
        Order(fill, bars);
        Heat();
        Cure();
    }

    private void Batter(MouldFill fill)
    {
        Title($"Density of the batter, from its parts ({(_job.Pour is null ? "20 to 60 °C" : "at the pour")})");
        foreach (BatterPart part in fill.Batter.Parts)
            Line($"{Show(part.Grams),10}  {Densities(part.Density)}  {part.Name}{(part.Density.Note is { } note ? $" ({note})" : "")}");
        Line($"{Show(fill.Batter.Grams),10}  {Densities(fill.Batter.Density)}  in all (estimate; whipped-in air makes it lighter)");
    }

    private void Batch(MouldFill fill)
    {
        Title("This batch");
        Figure<Volume> volume = fill.Volume;
        Line($"{Show(fill.PouredGrams)} to pour, {Range(volume.Low!.Value.Milliliters, volume.High!.Value.Milliliters)} mL: {Range(fill.ShareOfMould.Low!.Value.Percent, fill.ShareOfMould.High!.Value.Percent)} % of the mould (estimate)");
        if (fill.SurelyOverflows)
            Line($"It does NOT fit into one mould: {Text.Number(fill.MouldsNeeded)} hold it, the last one {Range(fill.ShareOfLastMould.Low!.Value.Percent, fill.ShareOfLastMould.High!.Value.Percent)} % full.");
        else if (fill.MayOverflow)
            Line("It may not fit into one mould: have a second one ready.");
        double factor = fill.FactorToFill(1);
        Line($"times {Text.Number(factor)} the middle of that range fills one mould: {Show(_plan.Formula.ListedGrams * factor)} of fats, {Show(_plan.Balance.BatchGrams * factor)} of batter");
    }

    private void Bars(MouldFill fill, BarLayout bars)
    {
        Title("Bars from a full mould");
        if (bars.Bars == 0)
        {
            Line("The block is too short for one such bar.");
            return;
        }
        Line($"{Text.Number(bars.Bars)} of {Text.Number(bars.BarVolume.Milliliters)} mL{(bars.Samples > 0 ? $", {Text.Number(bars.Saleable)} of them for sale and {Text.Number(bars.Samples)} as samples" : "")}; {Text.Number(bars.WasteFraction * 100)} % goes to ends, kerf and rest");
        Figure<Mass> held = fill.MassOfMould;
        (double low, double high) = (bars.MassWhenCut(held.Low!.Value).Grams, bars.MassWhenCut(held.High!.Value).Grams);
        Line($"each {ShowRange(low, high)} when cut, before anything evaporates (estimate)");
        double most = _plan.Moisture().LargestFraction;
        if (_job.Loss is { } loss)
            Line($"each {ShowRange(low * (1 - loss.DecimalFractions), high * (1 - loss.DecimalFractions))} cured, with your own loss of {Text.Number(loss.Percent)} %{(loss.DecimalFractions > most + 1e-9 ? $", which is MORE than the {Text.Number(most * 100)} % that can evaporate" : "")}");
        else
            Line($"each never below {ShowRange(low * (1 - most), high * (1 - most))} (bound: all water gone)");
    }

    private void Order(MouldFill fill, BarLayout bars)
    {
        if (_job.WantedBars is not { } count || _job.WantedMass is not { } mass || bars.Bars == 0)
            return;
        Title($"For {Text.Number(count)} bars of {Show(mass.Grams)} cured");
        if (_job.Loss is not { } loss)
        {
            Line("State the loss on curing by your own weighings; no rate can be computed.");
            return;
        }
        if (bars.Saleable == 0)
        {
            Line("Every piece of a mould is kept as a sample, so none is left to sell.");
            return;
        }
        BarOrder order = new() { Saleable = count, CuredMass = mass, Loss = loss, Samples = (int)Math.Ceiling((double)count / bars.Saleable) * bars.Samples, Waste = Stored.ToRatio(Math.Min(0.95, bars.WasteFraction)), LeftInPot = _job.LeftInPot };
        double factor = order.Batch.Grams / _plan.Balance.BatchGrams;
        Line($"each {Show(order.PouredMass.Grams)} as poured; {Show(order.Batch.Grams)} of batter, this batch times {Text.Number(factor)}");
        double thick = order.PouredMass.Grams / fill.Batter.Middle;
        if (_job.Mould.HasSizes && _job.Cut is { } cut && thick < _job.Mould.Milliliters)
            Line($"slices {Text.Number(_job.Mould.ThicknessFor(Volume.FromMilliliters(thick), cut.Across).Centimeters)} cm thick in this mould have that mass (estimate)");
    }

    private void Heat()
    {
        Title("Heat in the mould");
        if (_job.Pour is not { } pour || _plan.HeatInMould(_job.Mould, pour, _job.IsInsulated) is not { } heat)
        {
            Line("Not given: the temperature at the pour (--pour 38C).");
            return;
        }
        TemperatureUnit unit = pour.Unit == TemperatureUnit.DegreeFahrenheit ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius;
        string At(Temperature t) => ProcessText.Show(t, unit);
        Line($"from {At(pour)} to {At(heat.Peak.Low!.Value)} to {At(heat.Peak.High!.Value)} if no heat were lost (bound; its high end rests on memory)");
        if (heat.CoreCooling is { } cooling)
            Line($"the middle needs {ProcessText.Show(cooling.Low!.Value)} to {ProcessText.Show(cooling.High!.Value)} to lose two thirds of its excess, and longer in still air (estimate)");
        if (!heat.KeepsItsHeat)
            Line("A block that cools faster than it reacts stays well below the bound.");
        if (heat.SugarInBatch.Grams >= 0.05)
            Line($"{Show(heat.SugarInBatch.Grams)} of sugar in it may add up to {Step(heat.RiseBySugar, unit)} of that, and browns.");
        if (heat.MayScorch)
            Line("A large or insulated block with milk, honey or sugar: pour cooler, into smaller blocks, and don't insulate.");
        else if (heat.KeepsItsHeat && heat.MayBoil)
            Line("A large or insulated block may crack or rise over the rim: watch it, and don't insulate it further.");
    }

    private static string Step(TemperatureDelta delta, TemperatureUnit unit) =>
        unit == TemperatureUnit.DegreeFahrenheit ? $"{Text.Number(Math.Round(delta.Kelvins * 1.8, 1))} °F" : $"{Text.Number(Math.Round(delta.Kelvins, 1))} K";

    private void Cure()
    {
        Moisture moisture = _plan.Moisture();
        Title("Cure");
        Line($"{Text.Fixed(moisture.Water.Percent, 1)} % water at the pour{(moisture.AlcoholAndScent.Percent >= 0.05 ? $", {Text.Fixed(moisture.AlcoholAndScent.Percent, 1)} % alcohol and scent" : "")}: no bar can lose more than {Text.Fixed(moisture.LargestLoss.Percent, 1)} % (bound)");
        Line("How fast, only your own weighings tell (saponify cure). Common practice: four to six weeks (no source).");
    }

    private void Title(string title) => _text.Append('\n').Append(title).Append('\n');

    private void Line(string line) => _text.Append("  ").Append(line).Append('\n');

    private string Show(double grams)
    {
        double value = Stored.GramsIn(grams, _unit);
        return $"{Text.Fixed(value, _unit == MassUnit.Ounce ? 2 : value < 100 ? 1 : 0)} {UnitTable.Name(UnitTable.Mass, _unit)}";
    }

    private string ShowRange(double low, double high) => $"{Show(low)} to {Show(high)}";

    private static string Range(double low, double high) => $"{Text.Number(low)} to {Text.Number(high)}";

    private static string Densities(Figure<Density> density) => $"{Text.Fixed(density.Low!.Value.GramsPerMilliliter, 3)} to {Text.Fixed(density.High!.Value.GramsPerMilliliter, 3)} g/mL";
}
