using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Saponify.Internals;
using UnitsNet;

namespace Saponify.Cli;

/// <summary><c>saponify mould FILE</c></summary>
internal static class MouldCommand
{
    private const string BoxForm = "25cm,9cm,7cm", CylinderForm = "7cm,30cm", CavitiesForm = "6,95mL";
    private const string OneMould = $"Give one mould: --box {BoxForm}, --slab {BoxForm}, --cylinder {CylinderForm}, --cavities {CavitiesForm} or --volume 1.2L.";

    internal static Command Make(TextReader input)
    {
        Argument<string[]> files = new("FILE") { Description = "Formula files (JSON); - reads standard input.", Arity = ArgumentArity.OneOrMore };
        files.Validators.Add(FormulaInput.RefuseOptions);
        Option<Length[]?> box = AmountOptions.Lengths("--box", $"A box that is cut into slices: inner length, width, height, such as {BoxForm}. A mould given here takes the place of the file's, lining and fill height included.", 3, BoxForm);
        Option<Length[]?> slab = AmountOptions.Lengths("--slab", "A flat box that is cut both ways: inner length, width, height.", 3, BoxForm);
        Option<Length[]?> cylinder = AmountOptions.Lengths("--cylinder", $"A standing tube: inner diameter, height, such as {CylinderForm}.", 2, CylinderForm);
        Option<(int Count, Volume Each)?> cavities = new("--cavities") { Description = $"Equal cavities: count, volume of each, such as {CavitiesForm}.", CustomParser = ParseCavities };
        Option<Volume?> volume = new("--volume") { Description = "Any other mould by what it holds, such as 1.2L.", CustomParser = ParseVolume };
        Option<Length[]?> lining = AmountOptions.Lengths("--lining", "Thickness of the lining.", 1, "1mm");
        Option<Length[]?> filled = AmountOptions.Lengths("--filled", "How high it is filled above the lining; to the brim if not given.", 1, "6cm");
        Option<Length[]?> cut = AmountOptions.Lengths("--cut", "Thickness of a slice; for a box or slab that is cut both ways two sizes, such as 2.5cm or 8cm,5.5cm.", -1, "2.5cm");
        Option<Length[]?> kerf = AmountOptions.Lengths("--kerf", "What one cut takes away.", 1, "1mm");
        Option<Length[]?> ends = AmountOptions.Lengths("--ends", "What is trimmed off each end.", 1, "5mm");
        Option<int?> samples = new("--samples") { Description = "Bars of each block kept back as samples." };
        Option<Temperature?> pour = AmountOptions.Warmth("--pour", "The batter at the pour, such as 38C.", MouldHeat.PourLimits);
        Option<bool> insulated = new("--insulated") { Description = "The mould is wrapped or stands warm." };
        Option<Ratio?> left = AmountOptions.Share("--left-in-pot", "Share of the batch that stays in the pot, such as 1%.");
        Option<Ratio?> loss = AmountOptions.Share("--loss", "Loss from the pour to the cured bar by your own weighings, such as 9%.");
        Option<int?> bars = new("--bars") { Description = "Bars wanted for sale; with --each." };
        Option<Mass?> each = AmountOptions.Masses("--each", "Cured mass wanted of each, such as 110g.", BarOrder.CuredMassLimits);
        Command command = new("mould", "How much batter a mould takes, how many bars it gives, how warm it may get, what a bar can lose. Mould, cut and pour come from the setup of the file where no option says otherwise.")
        {
            files, box, slab, cylinder, cavities, volume, lining, filled, cut, kerf, ends, samples, pour, insulated, left, loss, bars, each,
        };
        command.Validators.Add(result =>
        {
            if (new Option[] { box, slab, cylinder, cavities, volume }.Count(o => result.GetResult(o) is not null) > 1)
                result.AddError(OneMould);
            if (result.GetResult(bars) is null != result.GetResult(each) is null)
                result.AddError("--bars and --each go together, such as --bars 24 --each 110g.");
        });
        command.SetAction(result => Run(result, input, result.GetValue(files)!, Job));
        return command;

        MouldJob? Job(ParseResult result, BatchSetup file)
        {
            Mould? mould = result.GetValue(box) is [_, ..] b ? Mould.Box(b[0], b[1], b[2])
                : result.GetValue(slab) is [_, ..] s ? Mould.Slab(s[0], s[1], s[2])
                : result.GetValue(cylinder) is [_, ..] c ? Mould.Cylinder(c[0], c[1])
                : result.GetValue(cavities) is { } cavity ? Mould.Cavities(cavity.Count, cavity.Each)
                : result.GetValue(volume) is { } held ? Mould.OfVolume(held) : file.Mould;
            if (mould is null)
                return null;
            if (result.GetValue(lining) is [var lined])
                mould = mould.WithLining(lined);
            if (result.GetValue(filled) is [var high])
                mould = mould.FilledTo(high);
            int kept = result.GetValue(samples) ?? file.Cut?.Samples ?? 0;
            // the pieces of cavities come as they are, whatever the file says of cutting
            CuttingPlan? plan = result.GetValue(cut) is [_, ..] sizes ? Cutting(sizes, file.Cut) : mould.HasSizes ? file.Cut : null;
            plan = plan is null ? null : plan with
            {
                Kerf = result.GetValue(kerf) is [var thin] ? thin : plan.Kerf,
                Ends = result.GetValue(ends) is [var off] ? off : plan.Ends,
                Samples = kept,
            };
            _ = plan is null ? mould.Unmould(kept) : mould.Cut(plan);
            MouldJob job = new()
            {
                Mould = mould,
                Cut = plan,
                Samples = kept,
                Pour = result.GetValue(pour) ?? file.Pour,
                IsInsulated = result.GetValue(insulated) || file.IsInsulated,
                LeftInPot = result.GetValue(left) ?? file.LeftInPot,
                Loss = result.GetValue(loss),
                WantedBars = result.GetValue(bars),
                WantedMass = result.GetValue(each),
            };
            if (job.WantedBars is { } count)                     // refused here rather than in the middle of a sheet
                _ = new BarOrder { Saleable = count, CuredMass = job.WantedMass!.Value, Loss = job.Loss ?? Ratio.Zero, LeftInPot = job.LeftInPot }.Batch;
            return job;
        }
    }

    private static int Run(ParseResult result, TextReader input, string[] files, Func<ParseResult, BatchSetup, MouldJob?> make) => FormulaInput.PrintEach(result, input, files, (path, file, _) =>
    {
        string fault = $"{OneMould} The file states none in its setup.";
        MouldJob? job = null;
        try
        {
            job = make(result, file.Setup);
        }
        catch (Exception wrong) when (wrong is ArgumentException or InvalidOperationException)
        {
            fault = wrong.Message;
        }
        if (job is null)
        {
            result.InvocationConfiguration.Error.WriteLine($"{FormulaInput.NameOf(path)}: {fault}");
            return (null, ExitCode.WrongUse);
        }
        BatchPlan plan = file.Formula!.Plan();
        return (MouldText.Of(plan, job), FormulaInput.ExitOf(plan));
    });

    private static CuttingPlan Cutting(Length[] sizes, CuttingPlan? file) => sizes.Length <= 2
        ? new() { Thickness = sizes[0], Across = sizes.Length == 2 ? sizes[1] : null, Kerf = file?.Kerf ?? Length.Zero, Ends = file?.Ends ?? Length.Zero }
        : throw new InvalidOperationException("--cut takes one size or two, such as 2.5cm or 8cm,5.5cm.");

    private static (int, Volume)? ParseCavities(ArgumentResult result)
    {
        string text = string.Join(' ', result.Tokens.Select(t => t.Value));
        string[] parts = text.Split(',', 2, StringSplitOptions.TrimEntries);
        string? fault = null;
        if (parts.Length == 2 && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int count) && AmountReader.TryVolume(parts[1], out Volume each, out fault))
            return (count, each);
        result.AddError($"--cavities: {fault ?? $"\"{text}\" is no count and volume"}; write it like {CavitiesForm}.");
        return null;
    }

    private static Volume? ParseVolume(ArgumentResult result)
    {
        string text = string.Join(' ', result.Tokens.Select(t => t.Value));
        if (AmountReader.TryVolume(text, out Volume volume, out string? fault))
            return volume;
        result.AddError($"--volume: {fault}.");
        return null;
    }
}
