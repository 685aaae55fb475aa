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
        Command command = new("process", "What temperatures to expect from the lye jug to the pot, step by step, with times to cool and cautions. Temperatures and vessel come from the setup of the file (process) where no option says otherwise.")
        {
            files, room, water, alkali, heldBack, fats, lye, mixed, milkLimit, ice, iceAt, vessel, bath, headspace,
        };
        command.SetAction(result => Run(result, input, result.GetValue(files)!, file => new()
        {
            Room = result.GetValue(room) ?? file.Room,
            Water = result.GetValue(water) ?? file.Water,
            Alkali = result.GetValue(alkali) ?? file.Alkali,
            HeldBack = result.GetValue(heldBack) ?? file.HeldBack,
            Fats = result.GetValue(fats) ?? file.Fats,
            // what the lye is cooled to wins over the pot, so that of the file gives way to a pot that is asked for
            Lye = result.GetValue(lye) ?? (result.GetValue(mixed) is null ? file.Lye : null),
            Mixed = result.GetValue(mixed) ?? file.Mixed,
            MilkLimit = result.GetValue(milkLimit) ?? file.MilkLimit,
            IceShare = result.GetValue(ice) ?? file.IceShare,
            Ice = result.GetValue(iceAt) ?? file.Ice,
            Vessel = result.GetValue(vessel) ?? file.Vessel,
            Surroundings = result.GetValue(bath) ? Surroundings.IceBath() : file.Surroundings,
            LeastHeadspace = result.GetValue(headspace) ?? file.LeastHeadspace,
        }));
        return command;
    }

    private static int Run(ParseResult result, TextReader input, string[] files, Func<ProcessSetup, ProcessSetup> setup) => FormulaInput.PrintEach(result, input, files, (_, file, _) =>
    {
        BatchPlan plan = file.Formula!.Plan();
        return (ProcessText.Of(plan.Process(setup(file.Setup.Process ?? ProcessSetup.Unknown)), Hint), FormulaInput.ExitOf(plan));
    });

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
