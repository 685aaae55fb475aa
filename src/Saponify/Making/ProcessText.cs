using System.Text;
using Saponify.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Saponify;

/// <summary>A process plan as text for people: steps, a small plot, cautions. Plain characters, invariant.</summary>
internal static class ProcessText
{
    private const int LabelWidth = 26, PlotWidth = 44, TextWidth = 100;

    /// <summary>The text.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="hint">How to give what is asked for, such as an option of a command line; null for none.</param>
    internal static string Of(ProcessPlan plan, Func<ProcessInput, string>? hint)
    {
        StringBuilder text = new();
        text.Append(plan.Plan.Formula.Name).Append(": temperatures\n");
        if (plan.Plan.Obstacles.Count > 0)
        {
            Title(text, "This batch can't be weighed");
            foreach (Obstacle obstacle in plan.Plan.Obstacles)
                text.Append("  ").Append(obstacle).Append('\n');
            return text.ToString();
        }
        Given(text, plan);
        for (int i = 0; i < plan.Steps.Count; i++)
            Step(text, plan, i);
        if (plan.Questions.Count > 0)
        {
            Title(text, "Not given, so not computed");
            foreach (ProcessQuestion question in plan.Questions)
                text.Append("  - ").Append(question.Text).Append(hint is null ? "" : $" ({hint(question.Input)})").Append('\n');
        }
        Plot(text, plan);
        Title(text, "Handling lye");
        foreach (string caution in LyeCautions.ForHandlingLye)
            text.Append("  - ").Append(caution).Append('\n');
        return text.ToString();
    }

    internal static string Show(Temperature temperature, TemperatureUnit unit) => $"{Number(temperature, unit)} {UnitTable.Name(UnitTable.Temperature, unit)}";

    internal static string Number(Temperature temperature, TemperatureUnit unit)
    {
        double rounded = Math.Round(temperature.As(unit), MidpointRounding.AwayFromZero);
        return Text.Fixed(rounded == 0 ? 0 : rounded, 0);
    }

    /// <summary>A duration in hours and minutes, to the minute.</summary>
    internal static string Show(Duration duration)
    {
        double minutes = Math.Round(duration.Minutes, MidpointRounding.AwayFromZero);
        double hours = Math.Floor(minutes / 60);
        return hours > 0 ? $"{Text.Number(hours)} h {Text.Number(minutes - (hours * 60))} min" : $"{Text.Number(minutes)} min";
    }

    private static void Given(StringBuilder text, ProcessPlan plan)
    {
        List<string> rows = [];
        void Add(string what, Temperature? temperature, string why = "")
        {
            if (temperature is { } value)
                rows.Add($"{what} {Show(value, plan.Unit)}{why}");
        }
        ProcessSetup setup = plan.Setup;
        Add("room", setup.Room);
        Add("alkali", setup.Alkali ?? setup.Room, setup.Alkali is null ? " (taken as warm as the room)" : "");
        foreach (LiquidPortion liquid in plan.Lye?.Jug.Liquids ?? default)
            Add(liquid.Liquid.Name + (liquid.IsFrozen ? ", frozen" : ""), liquid.Temperature);
        foreach (LiquidPortion liquid in plan.HeldBack ?? default)
            Add(liquid.Liquid.Name + (liquid.IsFrozen ? ", frozen" : "") + ", held back", liquid.Temperature);
        Add("fat pot", setup.Fats);
        Add("limit for milk", setup.MilkLimit, " (common practice, no source)");
        if (setup.Vessel is { } vessel)
            rows.Add($"{vessel.Material.Name}, {Text.Number(vessel.Milliliters)} mL, {Text.Number(vessel.Centimeters)} cm wide, {Text.Number(vessel.Grams)} g");
        if (rows.Count == 0)
            return;
        Title(text, "Given");
        foreach (string row in rows)
            text.Append("  ").Append(row).Append('\n');
    }

    private static void Step(StringBuilder text, ProcessPlan plan, int index)
    {
        ProcessStep step = plan.Steps[index];
        text.Append('\n').Append(Text.Number(index + 1)).Append(". ").Append(step.What).Append('\n');
        if (step.Temperature is { } temperature)
            text.Append("     ").Append(Headline(step, Show(temperature, plan.Unit))).Append('\n');
        if (step.Time is { } time && time.High!.Value.Seconds > 0)
            text.Append("     about ").Append(Show(time.Value)).Append(", between ").Append(Show(time.Low!.Value)).Append(" and ").Append(Show(time.High.Value)).Append(" (estimate)\n");
        foreach (string note in step.Notes)
            Wrapped(text, note);
    }

    private static string Headline(ProcessStep step, string temperature) => step.Kind switch
    {
        ProcessStepKind.WarmFats => $"to {temperature} or more",
        ProcessStepKind.AddLateFats => $"melted, {temperature} or more",
        ProcessStepKind.CoolLye => $"to {temperature}{(step.Claim == Claim.Given ? "" : " (estimate)")}",
        _ => step.Claim == Claim.UpperBound ? $"at most {temperature} (upper bound)" : $"about {temperature} (estimate)",
    };

    private static void Wrapped(StringBuilder text, string note)
    {
        int width = 0;
        foreach (string word in note.Split(' '))
        {
            if (width == 0 || width + 1 + word.Length > TextWidth)
            {
                text.Append(width == 0 ? "   - " : "\n     ").Append(word);
                width = word.Length;
            }
            else
            {
                text.Append(' ').Append(word);
                width += 1 + word.Length;
            }
        }
        text.Append('\n');
    }

    /// <summary>One bar a moment: the start, the bound, the lye while it cools, what comes after.</summary>
    private static void Plot(StringBuilder text, ProcessPlan plan)
    {
        List<(string Label, Temperature At, char Mark)> bars = [];
        if (plan.HottestLye is not { } hottest)
            return;
        foreach (LiquidPortion liquid in plan.Lye!.Jug.Liquids)
            bars.Add((liquid.IsFrozen ? "ice" : "liquid", liquid.Temperature!.Value, '='));
        bars.Add(plan.Lye.HasSugar ? ("lye, hottest", hottest, '-') : ("lye, upper bound", hottest, '#'));
        if (plan.Cooling is { } cooling && plan.CoolingTime is { } time && time.Value.Minutes > 0)
        {
            double step = Step(time.Value.Minutes);
            for (double minutes = step; minutes < time.Value.Minutes; minutes += step)
                bars.Add(("  after " + Show(Duration.FromMinutes(minutes)), Temperature.FromDegreesCelsius(cooling.CelsiusAfter(hottest.DegreesCelsius, minutes * 60)), '-'));
        }
        if (plan.LyeTemperature is { } lye)
            bars.Add(("lye, cooled" + (plan.CoolingTime is { Value.Seconds: > 0 } wait ? ", " + Show(wait.Value) : ""), lye, '='));
        if (plan.WithHeldBack?.MixedTemperature is { } joined)
            bars.Add(("held-back liquids in", joined, '-'));
        if (plan.WithFats?.MixedTemperature is { } pot)
            bars.Add(("in the pot", pot, '-'));
        double top = Math.Max(100, bars.Max(b => b.At.DegreesCelsius));
        Title(text, $"Temperatures (= given, # upper bound, - estimate; full width {Show(Temperature.FromDegreesCelsius(top), plan.Unit)})");
        foreach ((string label, Temperature at, char mark) in bars)
        {
            int width = (int)Math.Round(Math.Clamp(at.DegreesCelsius / top, 0, 1) * PlotWidth);
            text.Append("  ").Append(label.PadRight(LabelWidth)).Append(Show(at, plan.Unit).PadLeft(7)).Append(" |").Append(new string(mark, width)).Append('\n');
        }
    }

    /// <summary>A step of minutes that gives at most six bars.</summary>
    private static double Step(double minutes)
    {
        foreach (double step in (ReadOnlySpan<double>)[1, 2, 5, 10, 15, 30, 60, 120, 240])
        {
            if (minutes / step <= 6.5)
                return step;
        }
        return Math.Ceiling(minutes / 6);
    }

    private static void Title(StringBuilder text, string title) => text.Append('\n').Append(title).Append('\n');
}
