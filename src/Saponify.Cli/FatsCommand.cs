using System.CommandLine;
using System.Text;
using Saponify.Internals;

namespace Saponify.Cli;

/// <summary><c>saponify fats [WORD...]</c></summary>
internal static class FatsCommand
{
    internal static Command Make()
    {
        Argument<string[]> words = new("WORD") { Description = "Words that must stand in the id, a name or an alias.", Arity = ArgumentArity.ZeroOrMore };
        words.Validators.Add(FormulaInput.RefuseOptions);
        Option<string?> fatClass = new("--class") { Description = "Fats of this class only." };
        fatClass.AcceptOnlyFromAmong([.. FatTable.Classes.Select(c => c.Text)]);
        Option<bool> vegan = new("--vegan") { Description = "From plants and minerals, and synthetic ones, only." };
        Option<string[]> without = new("--without") { Description = "Allergen class that must not be listed, such as tree-nut; may be given again." };
        without.Validators.Add(result =>
        {
            foreach (string wrong in result.Tokens.Select(t => t.Value).Where(t => !Pantry.Reference.AllergenClasses.Contains(t, StringComparer.Ordinal)))
                result.AddError($"\"{wrong}\" is no allergen class. Known: {string.Join(", ", Pantry.Reference.AllergenClasses)}.");
        });
        Option<string?> atLeast = new("--evidence") { Description = "The weakest evidence that will do." };
        atLeast.AcceptOnlyFromAmong([.. FigureTable.EvidenceNames.Select(e => e.Text)]);
        Option<bool> fit = new("--fit") { Description = "Only fats whose value is fit for lye without the lot's certificate." };
        Option<string> output = new("--output", "-o") { Description = "text for people, json for programs.", DefaultValueFactory = _ => "text" };
        output.AcceptOnlyFromAmong("text", "json");
        Command command = new("fats", "Lists the fats on file with their saponification value, range and evidence.") { words, fatClass, vegan, without, atLeast, fit, output };
        command.SetAction(result => Run(result, result.GetValue(output) == "json", new()
        {
            Text = string.Join(' ', result.GetValue(words)!),
            Class = result.GetValue(fatClass) is { } name ? FatTable.Classes.First(c => c.Text == name).Value : null,
            VeganOnly = result.GetValue(vegan),
            WithoutAllergens = (result.GetValue(without) ?? []).ToValueList(),
            AtLeast = result.GetValue(atLeast) is { } least ? FigureTable.EvidenceNames.First(e => e.Text == least).Value : null,
            FitForLye = result.GetValue(fit),
        }));
        return command;
    }

    private static int Run(ParseResult result, bool json, PantryFilter filter)
    {
        TextWriter print = result.InvocationConfiguration.Output;
        if (OwnTables.Pantry(result, result.InvocationConfiguration.Error) is not { } pantry)
            return ExitCode.Unreadable;
        ValueList<Fat> fats = pantry.FindFats(filter);
        if (json)
        {
            print.Write(Encoding.UTF8.GetString(FatsJson.Write(pantry, fats)));
            return ExitCode.Fine;
        }
        print.Write($"{"",2}{"id",-28}{"mg KOH/g",8}   {"range",-16}name\n");
        foreach (Fat fat in fats)
            print.Write(Row(fat) + "\n");
        print.Write(FormattableString.Invariant($"{fats.Count} of {pantry.Fats.Count} fats, tables {pantry.Version}. \"saponify show ID\" says everything about one.\n"));
        return ExitCode.Fine;
    }

    private static string Row(Fat fat)
    {
        string value = fat.Saponification is { } used ? Text.Fixed(Math.Floor(used.Value.MilligramsKohPerGram * 10 + 1e-9) / 10, 1) : "-";
        Figure<SaponificationValue>? figure = fat.Saponification ?? fat.Figures.Saponification;
        string range = figure is null || figure.Low == figure.High ? "" : $"{Koh(figure.Low)} to {Koh(figure.High)}";
        List<string> remarks = [];
        if (fat.Saponification is null)
            remarks.Add("needs the lot's own value");
        if (fat.Class != FatClass.Triglyceride)
            remarks.Add(fat.Class == FatClass.Wax ? "wax" : "free acid");
        if (fat.Allergen is { } allergen)
            remarks.Add(allergen);
        if (fat.IsOwn)
            remarks.Add("your own figures");
        else if (fat.Saponification is not null)
            remarks.Add(EvidenceText.Of(fat.Saponification.Evidence));
        return $"  {fat.Id,-28}{value,8}   {range,-16}{fat.Name} ({string.Join("; ", remarks)})";
    }

    private static string Koh(SaponificationValue? value) => value is { } known ? Text.Number(Math.Round(known.MilligramsKohPerGram, 1)) : "?";
}
