using System.Text.Json;
using Saponify.Internals;
using S = Saponify.BatchShapes;

namespace Saponify;

/// <summary>
/// A batch on the bench as a file: JSON by the format <c>saponify-batch/1</c>, read strictly, with every fault of meaning at its place.
/// Immutable, thread-safe.
/// </summary>
/// <remarks>Ids of problems and notices are those of <see cref="FormulaFile"/>, since the formula stands in the file.</remarks>
public sealed class BatchFile
{
    private BatchFile(WeighedBatch? batch, ValueList<Problem> problems, ValueList<Problem> notices) => (Batch, Problems, Notices) = (batch, problems, notices);

    /// <summary>The batch; null when the file has problems: a file is never half-understood.</summary>
    public WeighedBatch? Batch { get; }

    /// <summary>What is wrong, in the order of the file: all faults of meaning, or the first of syntax. Empty when there is a batch.</summary>
    public ValueList<Problem> Problems { get; }

    /// <summary>What is worth knowing and does not hinder, such as figures that differ from the tables.</summary>
    public ValueList<Problem> Notices { get; }

    /// <summary>Reads the file of a batch. Faults are in <see cref="Problems"/>, never exceptions.</summary>
    /// <param name="utf8">The bytes of the file, UTF-8, at most <see cref="FormulaFile.LargestBytes"/>.</param>
    /// <param name="pantry">Where its materials are looked up.</param>
    /// <param name="formula">
    /// The formula at hand, for a file of weights that holds none; a file that holds another one is refused. Null when the file shall say.
    /// </param>
    /// <exception cref="ArgumentNullException"><paramref name="pantry"/> is null.</exception>
    public static BatchFile Read(ReadOnlySpan<byte> utf8, Pantry pantry, Formula? formula = null)
    {
        ArgumentNullException.ThrowIfNull(pantry);
        byte[] copy = utf8.Length > FormulaFile.LargestBytes ? [] : utf8.ToArray();
        if (JsonPiece.Open(copy, utf8.Length, out Problem? fault) is not { } root)
            return new(null, [fault!], default);
        ShapeReader reader = new(copy);
        WeighedBatch? batch = reader.Read(root, S.Batch) is { } file ? Bind(reader, file, pantry, formula) : null;
        return new(reader.Problems.Count == 0 ? batch : null, reader.Problems.ToProblems(), reader.Notices.ToProblems());
    }

    /// <summary>Writes a batch as a file: UTF-8, LF. Read again with the same pantry, it gives an equal batch.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="pantry">The tables it rests on; materials that it lacks can't be read back.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public static byte[] Write(WeighedBatch batch, Pantry pantry)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(pantry);
        return FormulaWriter.Written(json =>
        {
            json.WriteStartObject();
            json.WriteString(S.FormatMember.Name, S.Format);
            json.WriteString(S.WrittenBy.Name, LibraryVersion.Name);
            json.WritePropertyName(S.Formula.Name);
            FormulaWriter.Write(json, batch.Formula, pantry);
            json.WritePropertyName(S.Bench.Name);
            FormulaWriter.Write(json, batch.Planned, pantry);
            json.WriteString(S.State.Name, S.State.Choices[(int)batch.State]);
            json.WriteStartArray(S.Weights.Name);
            foreach (Weight weight in batch.Weights)
            {
                json.WriteStartObject();
                json.WriteString(S.WeightLine.Name, weight.Line);
                json.WriteString(S.WeightMass.Name, AmountWriter.Write(weight.Mass));
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        });
    }

    private static WeighedBatch? Bind(ShapeReader reader, BoundObject file, Pantry pantry, Formula? formula)
    {
        if (file.Text(S.FormatMember) is { } format && format != S.Format)
            file.Report(ProblemIds.WrongFormat, S.FormatMember, $"the format is \"{ShapeReader.Short(format)}\"", $"this version of the library reads \"{S.Format}\"");
        _ = file.Text(S.WrittenBy);
        Formula? written = file.At(S.Formula) is { } planned ? new FormulaBinder(reader, pantry).Bind(planned) : null;
        Formula? bench = file.At(S.Bench) is { } found ? new FormulaBinder(reader, pantry).Bind(found) : null;
        if (written is null && formula is null && !file.IsMeant(S.Formula))
            file.Missing(S.Formula, "\"formula\" is missing", "write the formula that was planned, an object { ... }");
        else if (written is not null && formula is not null && !written.Equals(formula))
            file.Report(ProblemIds.Conflict, S.Formula, "the file belongs to another formula than the one at hand", "take the formula it was begun with, or begin a new file");
        int state = file.Choice(S.State) is { } word ? Array.IndexOf(S.State.Choices, word) : 0;
        List<BoundObject?> weights = file.List(S.Weights);
        foreach (BoundObject? weight in weights)
            _ = (weight?.Text(S.WeightLine), weight?.Mass(S.WeightMass));
        if (reader.Problems.Count > 0 || (written ?? formula) is not { } start)
            return null;
        BatchPlan plan = start.Plan();
        if (!plan.Balance.CanBeWeighed)
        {
            file.Report(ProblemIds.OutOfRange, S.Formula, "the formula can't be weighed: " + plan.Obstacles[0].Reason.TrimEnd('.'));
            return null;
        }
        WeighedBatch batch = WeighedBatch.Start(plan);
        if (bench is not null)
        {
            if (!bench.Balance().CanBeWeighed || bench.Alkali is not WeighedAlkali || bench.Liquids.Weighed is null || bench.Additives.Any(a => a.Mass is null && !a.IsAmountUnknown))
            {
                file.Report(ProblemIds.Conflict, S.Bench, "not every mass in \"bench\" is worked out", "leave it out, and it is worked out anew");
                return null;
            }
            batch = batch.Found(bench);
        }
        return Weigh(batch.In((BatchState)state), weights.OfType<BoundObject>());
    }

    private static WeighedBatch Weigh(WeighedBatch batch, IEnumerable<BoundObject> weights)
    {
        string[] lines = [.. batch.Lines.Select(l => l.Path.ToString())];
        HashSet<string> weighed = new(StringComparer.Ordinal);
        List<Weight> list = [];
        foreach (BoundObject weight in weights)
        {
            string line = weight.Text(S.WeightLine)!;
            if (!lines.Contains(line, StringComparer.Ordinal))
                weight.Report(ProblemIds.WrongLine, S.WeightLine, $"the batch has no line \"{ShapeReader.Short(line)}\"", "its lines are " + string.Join(", ", lines.Take(20)) + (lines.Length > 20 ? ", ..." : ""));
            else if (!weighed.Add(line))
                weight.Report(ProblemIds.WrongLine, S.WeightLine, $"the line \"{line}\" stands twice", "keep the one that counts");
            else
                list.Add(new(line, weight.Mass(S.WeightMass)!.Value));
        }
        return batch.Weighing(list.ToValueList());
    }
}
