using System.CommandLine;
using Saponify.Internals;
using UnitsNet;

namespace Saponify.Cli;

/// <summary><c>saponify cure WEIGHINGS</c></summary>
internal static class CureCommand
{
    internal static Command Make(TextReader input)
    {
        Argument<string> file = new("WEIGHINGS") { Description = "Table of weighings (CSV: date, mass with its unit, and bar for more than one)." };
        Option<Scale?> scale = new("--scale") { Description = "Step of the scale, such as 0.1g.", CustomParser = SetupOptions.ParseScale };
        Option<Ratio?> weekly = AmountOptions.Share("--weekly-loss", "A bar is ready when it loses less than this in a week, such as 1%.");
        Option<Ratio?> near = AmountOptions.Share("--near-final", "Or when it is heavier than its final mass by no more than this, such as 0.5%.");
        Option<string?> formula = new("--formula") { Description = "The formula file, for the mass balance of the water." };
        Option<Mass?> poured = AmountOptions.Masses("--poured", "What each bar weighed as poured.", Stored.BarLimits);
        Option<Ratio?> further = AmountOptions.Share("--further-loss", "What bars will still lose until they are sold, such as 1%.");
        Option<Mass?> declared = AmountOptions.Masses("--declared", "A declared mass to hold against the bars.", Stored.BarLimits);
        Command command = new("cure", "Fits your own weighings of curing bars: final mass, ready date with interval, water left, faults, net quantity.")
        {
            file, scale, weekly, near, formula, poured, further, declared,
        };
        command.Validators.Add(result =>
        {
            if (result.GetResult(weekly) is not null && result.GetResult(near) is not null)
                result.AddError("Give --weekly-loss or --near-final, not both.");
        });
        command.SetAction(result =>
        {
            ReadyWhen? when;
            try
            {
                when = result.GetValue(weekly) is { } rate ? ReadyWhen.WeeklyLossBelow(rate) : result.GetValue(near) is { } share ? ReadyWhen.WithinOfFinal(share) : null;
                if (result.GetValue(further) is { } loss)
                    Stored.Fraction(loss, 0, 0.8, "The further loss");
            }
            catch (ArgumentException wrong)
            {
                result.InvocationConfiguration.Error.WriteLine(wrong.Message);
                return ExitCode.WrongUse;
            }
            return Run(result, input, result.GetValue(file)!, result.GetValue(formula), when, result.GetValue(scale), result.GetValue(poured), result.GetValue(further) ?? Ratio.Zero, result.GetValue(declared));
        });
        return command;
    }

    private static int Run(ParseResult result, TextReader input, string path, string? formula, ReadyWhen? when, Scale? scale, Mass? poured, Ratio further, Mass? declared)
    {
        TextWriter print = result.InvocationConfiguration.Output, errors = result.InvocationConfiguration.Error;
        Moisture? moisture = null;
        if (formula is not null)
        {
            if (OwnTables.Pantry(result, errors) is not { } pantry || FormulaInput.Read(formula, pantry, input, errors)?.Formula is not { } read)
                return ExitCode.Unreadable;
            BatchPlan plan = read.Plan();
            moisture = plan.Balance.CanBeWeighed ? plan.Moisture() : null;
            if (moisture is null)
                errors.WriteLine($"{formula}: note: this batch can't be weighed, so there is no mass balance");
        }
        byte[] bytes;
        try
        {
            using FileStream stream = File.OpenRead(path);
            bytes = new byte[CureFile.LargestBytes + 1];
            bytes = bytes[..stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            errors.WriteLine($"{path}: error: {fault.Message}");
            return ExitCode.Unreadable;
        }
        CureFile file = CureFile.Read(bytes, scale, poured, moisture);
        foreach (TableFault fault in file.Faults.Concat(file.Findings))
            errors.WriteLine($"{path}{fault.ToString()["weighings".Length..]}");
        if (file.Faults.Count > 0)
            return ExitCode.Unreadable;
        print.Write(CureText.Of(file.Series, when, further, declared));
        return file.Findings.Count > 0 ? ExitCode.Findings : ExitCode.Fine;
    }
}
