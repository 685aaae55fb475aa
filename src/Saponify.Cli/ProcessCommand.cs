using System.CommandLine;
using System.CommandLine.Parsing;
using Saponify.Internals;
using UnitsNet;

namespace Saponify.Cli;

/// <summary><c>saponify process FILE</c></summary>
internal static class ProcessCommand
{
    private const string VesselForm = "polypropylene,1.5L,12cm,140g";

    internal static Command Make(TextReader input)
    {
        Argument<string[]> files = new("FILE") { Description = "Formula files (JSON); - reads standard input.", Arity = ArgumentArity.OneOrMore };
        files.Validators.Add(FormulaInput.RefuseOptions);
        Option<Temperature?> room = AmountOptions.Warmth("--room", "The room, such as 21C or 70F.", ProcessSetup.RoomLimits);
        Option<Temperature?> water = AmountOptions.Warmth("--water", "The liquid the alkali is dissolved in, where the formula does not state it.", ProcessSetup.WaterLimits);
        Option<Temperature?> alkali = AmountOptions.Warmth("--alkali", "The alkali; as warm as the room if not given.", ProcessSetup.AlkaliLimits);
        Option<Temperature?> heldBack = AmountOptions.Warmth("--held-back", "Held-back liquids, where the formula does not state it.", ProcessSetup.HeldBackLimits);
        Option<Temperature?> fats = AmountOptions.Warmth("--fats", "The fat pot when the lye comes in.", ProcessSetup.FatsLimits);
        Option<Temperature?> lye = AmountOptions.Warmth("--lye", "What the lye is cooled to.", ProcessSetup.LyeLimits);
        Option<Temperature?> mixed = AmountOptions.Warmth("--mixed", "The temperature wanted in the pot; without --lye it decides what the lye is cooled to.", ProcessSetup.MixedLimits);
        Option<Temperature?> milkLimit = AmountOptions.Warmth("--milk-limit", "The temperature that lye with milk or sugar shall not pass.", ProcessSetup.MilkLimitLimits);
        Option<Ratio?> ice = AmountOptions.Share("--ice", "Share of the lye liquid that goes in as ice, such as 30%.");
        Option<Temperature?> iceAt = AmountOptions.Warmth("--ice-at", "How cold that ice is.", ProcessSetup.IceLimits);
        Option<Vessel?> vessel = new("--vessel") { Description = $"What the lye is made in: material, volume, inner diameter, mass, such as {VesselForm}.", CustomParser = ParseVessel };
        Option<bool> bath = new("--ice-bath") { Description = "The lye cools in a bath of ice and water instead of still air." };
        Option<Ratio?> headspace = AmountOptions.Share("--headspace", "Share of the vessel that shall stay free, such as 40%.");
        Command command = new("process", "What temperatures to expect from the lye jug to the pot, step by step, with times to cool and cautions.")
        {
            files, room, water, alkali, heldBack, fats, lye, mixed, milkLimit, ice, iceAt, vessel, bath, headspace,
        };
        command.SetAction(result => Run(result, input, result.GetValue(files)!, new()
        {
            Room = result.GetValue(room),
            Water = result.GetValue(water),
            Alkali = result.GetValue(alkali),
            HeldBack = result.GetValue(heldBack),
            Fats = result.GetValue(fats),
            Lye = result.GetValue(lye),
            Mixed = result.GetValue(mixed),
            MilkLimit = result.GetValue(milkLimit),
            IceShare = result.GetValue(ice),
            Ice = result.GetValue(iceAt),
            Vessel = result.GetValue(vessel),
            Surroundings = result.GetValue(bath) ? Surroundings.IceBath() : null,
            LeastHeadspace = result.GetValue(headspace),
        }));
        return command;
    }

    private static int Run(ParseResult result, TextReader input, string[] files, ProcessSetup setup)
    {
        TextWriter print = result.InvocationConfiguration.Output, errors = result.InvocationConfiguration.Error;
        if (OwnTables.Pantry(result, errors) is not { } pantry)
            return ExitCode.Unreadable;
        int exit = ExitCode.Fine;
        bool first = true;
        foreach (string path in files)
        {
            if (FormulaInput.Read(path, pantry, input, errors)?.Formula is not { } formula)
            {
                exit = ExitCode.Unreadable;
                continue;
            }
            BatchPlan plan = formula.Plan();
            if (!first)
                print.WriteLine();
            first = false;
            print.Write(ProcessText.Of(plan.Process(setup), Hint));
            if (!plan.Balance.CanBeWeighed)
                exit = Math.Max(exit, ExitCode.Findings);
        }
        return exit;
    }

    private static string Hint(ProcessInput input) => input switch
    {
        ProcessInput.Room => "--room 21C",
        ProcessInput.Water => "--water 18C",
        ProcessInput.Ice => "--ice-at -18C",
        ProcessInput.HeldBack => "--held-back 5C",
        ProcessInput.Fats => "--fats 38C",
        ProcessInput.Lye => "--lye 35C or --mixed 36C",
        _ => $"--vessel {VesselForm}",
    };

    private static Vessel? ParseVessel(ArgumentResult result)
    {
        string text = string.Join(' ', result.Tokens.Select(t => t.Value));
        string[] parts = text.Split(',', StringSplitOptions.TrimEntries);
        string? fault = null;
        if (parts.Length == 4 && AmountReader.TryVolume(parts[1], out Volume volume, out fault) && AmountReader.TryLength(parts[2], out Length diameter, out fault) && AmountReader.TryMass(parts[3], out Mass mass, out fault))
        {
            try
            {
                return new(VesselMaterial.Of(parts[0]), volume, diameter, mass);
            }
            catch (Exception wrong) when (wrong is KeyNotFoundException or ArgumentException)
            {
                fault = wrong.Message.TrimEnd('.');
            }
        }
        result.AddError($"--vessel: {fault ?? $"\"{text}\" has not the four parts material, volume, inner diameter and mass"}; write it like {VesselForm}.");
        return null;
    }
}
