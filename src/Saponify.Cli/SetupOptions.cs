using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Saponify.Internals;
using UnitsNet;

namespace Saponify.Cli;

/// <summary>The circumstances of a batch as options: scale, product, exclusions, date.</summary>
internal sealed class SetupOptions
{
    private readonly Option<Scale?> _scale = new("--scale") { Description = "Step of the scale, such as 1g or 0.1oz.", CustomParser = ParseScale };
    private readonly Option<Scale?> _alkaliScale = new("--alkali-scale") { Description = "Step of the scale for the alkali, when it is another one.", CustomParser = ParseScale };
    private readonly Option<string?> _form = new("--form") { Description = "What is to come out: bar or soft." };
    private readonly Option<string[]> _exclude = new("--exclude") { Description = "What the customer excludes: animal, milk, tree-nut ... or ids of materials.", AllowMultipleArgumentsPerToken = true };
    private readonly Option<DateOnly?> _today = new("--today") { Description = "Today as 2026-11-25, for what expires.", CustomParser = ParseDate };
    private readonly Option<string[]> _market = new("--market") { Description = "Market areas, such as EU.", AllowMultipleArgumentsPerToken = true };

    internal SetupOptions() => _form.AcceptOnlyFromAmong("bar", "soft");

    internal void AddTo(Command command)
    {
        command.Add(_scale);
        command.Add(_alkaliScale);
        command.Add(_form);
        command.Add(_exclude);
        command.Add(_market);
        command.Add(_today);
    }

    /// <summary>The circumstances of a file, where no option says otherwise.</summary>
    internal BatchSetup Of(ParseResult result, BatchSetup file) => file with
    {
        Scale = result.GetValue(_scale) ?? file.Scale,
        AlkaliScale = result.GetValue(_alkaliScale) ?? (result.GetValue(_scale) is null ? file.AlkaliScale : null),
        Form = result.GetValue(_form) switch { "bar" => ProductForm.Bar, "soft" => ProductForm.Soft, _ => file.Form },
        Excluded = result.GetValue(_exclude) is { Length: > 0 } excluded ? excluded.ToValueList() : file.Excluded,
        Markets = result.GetValue(_market) is { Length: > 0 } markets ? markets.ToValueList() : file.Markets,
        Today = result.GetValue(_today) ?? file.Today,
    };

    internal static Scale? ParseScale(ArgumentResult result)
    {
        string text = string.Join(' ', result.Tokens.Select(t => t.Value));
        if (AmountReader.TryMass(text, out Mass step, out string? fault) && Scale.StepLimits.Holds(Stored.ToGrams(step)))
            return new Scale(step);
        result.AddError($"\"{text}\" is no step of a scale: {fault ?? "it lies between 0.000001 g and 100 kg"}.");
        return null;
    }

    private static DateOnly? ParseDate(ArgumentResult result)
    {
        string text = string.Join(' ', result.Tokens.Select(t => t.Value));
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
            return date;
        result.AddError($"\"{text}\" is no date; write it as 2026-11-25.");
        return null;
    }
}
