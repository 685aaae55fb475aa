using System.Text;
using System.Text.Json;

namespace Saponify;

/// <summary>
/// Writes what has changed in a formula into the text of its file. The formula of the file and the changed one are both written by the
/// table of members; where those two differ, the file is made to say what the changed one says, and nothing else of it is touched.
/// </summary>
internal sealed class FormulaEditor
{
    private readonly byte[] _utf8, _before, _after;
    private readonly JsonPiece _root, _old, _wanted;
    private readonly FileText _text;

    internal FormulaEditor(byte[] utf8, JsonPiece root, byte[] before, byte[] after)
    {
        (_utf8, _root, _before, _after) = (utf8, root, before, after);
        _old = JsonPiece.Parse(before, out _, out _)!;
        _wanted = JsonPiece.Parse(after, out _, out _)!;
        _text = new(utf8, root);
    }

    internal byte[] Edit()
    {
        FileEdits edits = new(_utf8);
        Object(_root, _old, _wanted, FormulaShapes.Formula, edits, exactLine: false);
        return edits.Apply(0, _utf8.Length);
    }

    private void Object(JsonPiece file, JsonPiece? old, JsonPiece wanted, Shape shape, FileEdits edits, bool exactLine)
    {
        bool[] look = LookAt(old, wanted, shape, exactLine);
        SequenceEdit members = new(_text, edits, file, _after);
        foreach (Alternatives alternatives in shape.OneOf)
            Swap(file, wanted, shape, alternatives, look, members);
        for (int i = 0; i < look.Length; i++)
        {
            if (!look[i])
                continue;
            Member member = shape.Members[i];
            JsonPiece? now = file.Member(member.Name), then = wanted.Member(member.Name);
            if (now is not null && then is null)
                members.Remove(file.Items.IndexOf(now));
            else if (now is null && then is not null)
                members.Insert(Before(file, shape, i), then);
            else if (now is not null && then is not null)
                Value(now, old?.Member(member.Name), then, member, edits);
        }
        members.Finish();
    }

    /// <summary>The members that have changed, and those that are read in their light.</summary>
    private bool[] LookAt(JsonPiece? old, JsonPiece wanted, Shape shape, bool exactLine)
    {
        bool[] changed = [.. shape.Members.Select(m => !Same(old?.Member(m.Name), wanted.Member(m.Name)))], look = [.. changed];
        foreach (Member[] group in shape.Together.Concat(shape.OneOf.Select(o => o.Members)))
        {
            if (Array.Exists(group, m => changed[shape.IndexOf(m)]))
                Array.ForEach(group, m => look[shape.IndexOf(m)] = true);
        }
        if (exactLine)
            look[shape.IndexOf(FormulaShapes.Line)] = true;
        return look;
    }

    /// <summary>One of several alternatives gives way to another: it takes the same place.</summary>
    private static void Swap(JsonPiece file, JsonPiece wanted, Shape shape, Alternatives alternatives, bool[] look, SequenceEdit members)
    {
        Member? gone = Array.Find(alternatives.Members, m => look[shape.IndexOf(m)] && file.Member(m.Name) is not null && wanted.Member(m.Name) is null);
        Member? come = Array.Find(alternatives.Members, m => look[shape.IndexOf(m)] && file.Member(m.Name) is null && wanted.Member(m.Name) is not null);
        if (gone is null || come is null)
            return;
        members.Replace(file.Items.IndexOf(file.Member(gone.Name)!), wanted.Member(come.Name)!);
        look[shape.IndexOf(gone)] = look[shape.IndexOf(come)] = false;
    }

    private void Value(JsonPiece file, JsonPiece? old, JsonPiece wanted, Member member, FileEdits edits)
    {
        if (member.Kind == MemberKind.Object)
            Object(file, old, wanted, member.Shape!, edits, exactLine: false);
        else if (member.Kind == MemberKind.List)
            List(file, old, wanted, member.Shape!, edits);
        else if (!Same(old, wanted))
            edits.Replace(file.Start, file.End, Encoding.UTF8.GetString(_after.AsSpan(wanted.Start, wanted.End - wanted.Start)));
    }

    /// <summary>Lines are known by their ids. Those in their old order stay; between them new lines take the places of removed ones.</summary>
    private void List(JsonPiece file, JsonPiece? old, JsonPiece wanted, Shape shape, FileEdits edits)
    {
        if (Same(old, wanted))
            return;
        bool hasLines = HasLines(shape);
        string[] was = hasLines ? Ids(old, shape) : Texts(old, _before), ids = hasLines ? Ids(wanted, shape) : Texts(wanted, _after);
        Dictionary<string, int> places = was.Select((id, place) => (id, place)).ToDictionary(p => p.id, p => p.place, StringComparer.Ordinal);
        int[] from = [.. ids.Select(id => places.GetValueOrDefault(id, -1))];
        HashSet<string> kept = new(ids, StringComparer.Ordinal);
        // an id that the file leaves out follows from the materials and their order: when those change, it is written
        bool exactLine = hasLines && (!was.SequenceEqual(ids, StringComparer.Ordinal) || !Materials(old, shape).SequenceEqual(Materials(wanted, shape), StringComparer.Ordinal));
        SequenceEdit lines = new(_text, edits, file, _after);

        int slot = 0, line = 0;
        foreach (int stays in (int[])[.. LongestRise(from), from.Length])
        {
            int gap = stays < from.Length ? from[stays] : file.Items.Count;
            for (; line < stays; line++)
            {
                string? moved = from[line] >= 0 ? Moved(file.Items[from[line]], old!.Items[from[line]], wanted.Items[line], shape) : null;
                if (slot >= gap)
                    lines.Insert(slot - 1, wanted.Items[line], moved);
                else if (moved is not null || kept.Contains(was[slot]))
                    lines.Replace(slot++, wanted.Items[line], moved);
                else
                    Object(file.Items[slot], old!.Items[slot++], wanted.Items[line], shape, edits, exactLine);
            }
            for (; slot < gap; slot++)
                lines.Remove(slot);
            if (stays < from.Length)
                Object(file.Items[slot], old!.Items[slot++], wanted.Items[line++], shape, edits, exactLine);
        }
        lines.Finish();
    }

    /// <summary>The text of a line that goes to another place of its list.</summary>
    private string Moved(JsonPiece file, JsonPiece old, JsonPiece wanted, Shape shape)
    {
        FileEdits edits = new(_utf8);
        Object(file, old, wanted, shape, edits, exactLine: HasLines(shape));
        return Encoding.UTF8.GetString(edits.Apply(file.Start, file.End));
    }

    private static bool HasLines(Shape shape) => Array.Exists(shape.Members, m => ReferenceEquals(m, FormulaShapes.Line));

    private static string[] Ids(JsonPiece? list, Shape shape) =>
        list is null ? [] : [.. list.Items.Select(i => (i.Member(FormulaShapes.Line.Name) ?? i.Member(Material(shape)))!.Text)];

    /// <summary>Items without ids are known by what they say; the same once more is numbered.</summary>
    private static string[] Texts(JsonPiece? list, byte[] from)
    {
        if (list is null)
            return [];
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        return [.. list.Items.Select(i => Encoding.UTF8.GetString(from.AsSpan(i.Start, i.End - i.Start))).Select(t => t + (seen[t] = seen.GetValueOrDefault(t) + 1))];
    }

    private static IEnumerable<string> Materials(JsonPiece? list, Shape shape) =>
        list is null ? [] : list.Items.Select(i => i.Member(Material(shape))!.Text);

    private static string Material(Shape shape) => Array.Find(shape.Members, m => m.Required)!.Name;

    /// <summary>The element of the file after which a member belongs by the table, or -1.</summary>
    private static int Before(JsonPiece file, Shape shape, int member)
    {
        (int after, int best) = (-1, -1);
        for (int i = 0; i < file.Items.Count; i++)
        {
            int place = shape.IndexOf(file.Items[i].Name);
            if (place < member && place > best)
                (after, best) = (i, place);
        }
        return after;
    }

    /// <summary>True when both were written alike; both come from the same writer, so that equal values have equal bytes.</summary>
    private bool Same(JsonPiece? old, JsonPiece? wanted) =>
        old is null ? wanted is null : wanted is not null && _before.AsSpan(old.Start, old.End - old.Start).SequenceEqual(_after.AsSpan(wanted.Start, wanted.End - wanted.Start));

    /// <summary>Places of a longest run of rising numbers, the negative ones left out: the lines that can stay where they are.</summary>
    private static List<int> LongestRise(int[] numbers)
    {
        List<int> ends = [];                                  // ends[k]: place of the least number that ends a run of k + 1
        int[] previous = new int[numbers.Length];
        for (int i = 0; i < numbers.Length; i++)
        {
            if (numbers[i] < 0)
                continue;
            (int low, int high) = (0, ends.Count);
            while (low < high)
            {
                int middle = (low + high) / 2;
                (low, high) = numbers[ends[middle]] < numbers[i] ? (middle + 1, high) : (low, middle);
            }
            previous[i] = low == 0 ? -1 : ends[low - 1];
            if (low == ends.Count)
                ends.Add(i);
            else
                ends[low] = i;
        }
        List<int> run = [];
        for (int at = ends.Count == 0 ? -1 : ends[^1]; at >= 0; at = previous[at])
            run.Add(at);
        run.Reverse();
        return run;
    }
}
