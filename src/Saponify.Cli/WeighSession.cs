using System.Globalization;
using Saponify.Internals;
using UnitsNet;

namespace Saponify.Cli;

/// <summary>One sitting at the bench: asks line by line, keeps every answer at once. Answers are few and short, for wet gloves.</summary>
internal sealed class WeighSession(WeighedBatch start, Scale? scale, Scale? alkaliScale, TextReader input, TextWriter print, Action<WeighedBatch> keep)
{
    private const string Words = "a mass such as 415 g; Enter for later; back to take the last weight back; list; in when the alkali is in the pot; poured; stop";

    private WeighedBatch _batch = start;
    private readonly HashSet<string> _later = new(StringComparer.Ordinal);

    private readonly Rounding _others = scale is null ? PlanSheet.ForPrint(start.Planned.Plan(), PlanSheet.UsualUnit(start.Formula)) : Rounding.Of(scale);

    private Rounding Alkali => alkaliScale is null ? _others : Rounding.Of(alkaliScale);

    internal WeighedBatch Run()
    {
        keep(_batch);
        print.WriteLine(_batch.Formula.Name);
        print.WriteLine("Answer with " + Words + ".");
        while (true)
        {
            WeighedLine? line = Next();
            if (line is null)
                ShowChoices();
            else
                print.Write(Question(line));
            print.Flush();
            if (input.ReadLine() is not { } answer || answer.Trim() is "stop")
                break;
            Answer(line, answer.Trim());
        }
        print.WriteLine();
        print.Write(scale is null ? _batch.ToString() : _batch.ToText(scale, alkaliScale));
        return _batch;
    }

    /// <summary>Fats first, then what else takes up lye or brings water, the lye liquid, and the alkali last: by then everything it depends on is weighed.</summary>
    private WeighedLine? Next() => _batch.State == BatchState.Poured ? null : _batch.Missing.Where(l => !_later.Contains(l.Path.ToString())).OrderBy(Turn).FirstOrDefault();

    private static int Turn(WeighedLine line) => BatchText.IsAlkali(line) ? 4 : line.Path.ToString() switch
    {
        "liquids.lyeLiquid" => 3,
        { } path when path.StartsWith("fats", StringComparison.Ordinal) => 0,
        { } path when path.StartsWith("liquids", StringComparison.Ordinal) => 1,
        _ => 2,
    };

    private string Question(WeighedLine line) => $"{line.What}, {Wanted(line)}: ";

    /// <summary>What to weigh: of the alkali and the lye liquid what the real weights ask for, of the others the plan.</summary>
    private string Wanted(WeighedLine line)
    {
        if (_batch.State == BatchState.Weighing && Turn(line) == 4 && AlkaliNow(line) is { } alkali)
            return $"weigh {AmountWriter.Write(Alkali.Down(alkali.Grams))}, not more";
        if (Turn(line) == 3 && _batch.LiquidToWeigh is { } liquid)
            return $"weigh {_others.Nearest(liquid.Grams)}";
        return "plan " + BatchText.Planned(line, _others, Alkali);
    }

    private AlkaliPortion? AlkaliNow(WeighedLine line) => _batch.AlkaliToWeigh.FirstOrDefault(a => FormulaPath.Alkali.Member("alkalis").Item(0, a.Line).ToString() == line.Path.ToString());

    private void Answer(WeighedLine? line, string answer)
    {
        if (answer is "list")
            print.Write(scale is null ? _batch.ToString() : _batch.ToText(scale, alkaliScale));
        else if (answer is "back")
            Back();
        else if (answer is "in")
            AlkaliIsIn();
        else if (answer is "poured")
            Change(_batch.WhenPoured());
        else if (line is null)
            Choose(answer);
        else if (answer.Length == 0)
            _later.Add(line.Path.ToString());
        else
            Weigh(line, answer);
    }

    private void Weigh(WeighedLine line, string answer)
    {
        Rounding rounding = Turn(line) == 4 ? Alkali : _others;
        string text = answer.Length > 0 && (char.IsAsciiDigit(answer[^1]) || answer[^1] == '.') ? answer + " " + rounding.UnitText : answer;
        if (!AmountReader.TryMass(text, out Mass mass, out string? fault))
        {
            print.WriteLine($"  \"{answer}\": {fault}; answer with {Words}.");
            return;
        }
        if (!(mass.Value >= 0 && mass.Grams <= 1e9))
        {
            print.WriteLine("  A weight lies between 0 and 1000 t.");
            return;
        }
        double asked = Turn(line) == 4 && AlkaliNow(line) is { } alkali ? alkali.Grams : Turn(line) == 3 && _batch.LiquidToWeigh is { } liquid ? liquid.Grams : line.PlannedGrams;
        double off = asked > 0 ? (mass.Grams / asked) - 1 : 0;
        if (off is < -0.5 or > 0.5)
        {
            print.Write($"  {AmountWriter.Write(mass)} is {BatchText.Signed(off * 100)} % off. Type it again to keep it: ");
            print.Flush();
            if (input.ReadLine()?.Trim() != answer)
            {
                print.WriteLine("  Not kept.");
                return;
            }
        }
        print.WriteLine($"  {AmountWriter.Write(mass)} of {line.What}{(Math.Abs(off) >= 0.0005 ? $", {BatchText.Signed(off * 100)} %" : "")}.");
        Change(_batch.Weigh(line.Path.ToString(), mass));
    }

    private void AlkaliIsIn()
    {
        foreach (WeighedLine line in _batch.Missing.Where(l => Turn(l) == 4))
            print.WriteLine($"  {line.What} has no weight yet and is reckoned at the plan; give it when asked if you know it.");
        if (_batch.State == BatchState.Weighing)
            Change(_batch.WithAlkaliIn());
    }

    private void Back()
    {
        if (_batch.Weights.Count == 0)
            print.WriteLine("  Nothing is weighed yet.");
        else
            Change(_batch.Unweigh(_batch.Weights[^1].Line));
    }

    private ValueList<BatchChoice> Choices => scale is null ? _batch.Choices : _batch.ChoicesOn(scale, alkaliScale);

    private void ShowChoices()
    {
        int number = 0;
        foreach (BatchChoice choice in Choices)
            print.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {++number}. {choice}"));
        print.Write($"What now ({(number > 0 ? "a number of the list; " : "")}{(_later.Count > 0 ? "Enter asks again for what is left; " : "")}back, list, in, poured, stop)? ");
    }

    private void Choose(string answer)
    {
        ValueList<BatchChoice> choices = Choices;
        if (!int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out int number) || number < 1 || number > choices.Count)
            _later.Clear();
        else
            Change(choices[number - 1].Apply());
    }

    /// <summary>Keeps the batch at once, and says what it changed.</summary>
    private void Change(WeighedBatch changed)
    {
        _batch = changed;
        keep(_batch);
        foreach (string line in BatchText.Standing(_batch, _others, Alkali))
            print.WriteLine("  " + line);
    }
}
