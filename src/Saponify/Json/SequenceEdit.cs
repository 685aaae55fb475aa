namespace Saponify;

/// <summary>
/// Changes the members of an object, or the items of a list, in the text of a file. Elements that stay keep their bytes; a removed one
/// goes with its comma, and with its line if it had one to itself; a new one looks like its neighbours.
/// </summary>
internal sealed class SequenceEdit(FileText file, FileEdits edits, JsonPiece owner, byte[] source)
{
    private readonly bool[] _removed = new bool[owner.Items.Count];
    private List<(int After, JsonPiece Piece, string? Text)> _inserted = [];

    internal void Remove(int element) => _removed[element] = true;

    /// <summary>Puts a new element after another one (-1: before all); with a text of its own where it has one already.</summary>
    internal void Insert(int after, JsonPiece piece, string? text = null) => _inserted.Add((after, piece, text));

    internal void Replace(int element, JsonPiece piece, string? text = null)
    {
        JsonPiece old = owner.Items[element];
        edits.Replace(old.NameStart, old.End, text ?? Written(piece, file.Indent(old.NameStart)));
    }

    internal void Finish()
    {
        if (_inserted.Count == 0 && !Array.Exists(_removed, r => r))
            return;
        if (_removed.Length == 0)
        {
            Fill();
            return;
        }
        if (!Array.Exists(_removed, r => !r) && _inserted.Count > 0)
        {
            // nothing stays: the first new one takes the place of the first old one
            _removed[0] = false;
            Replace(0, _inserted[0].Piece, _inserted[0].Text);
            _inserted.RemoveAt(0);
        }
        _inserted = [.. _inserted.OrderBy(i => i.After)];
        for (int i = 0; i < _removed.Length; i++)
        {
            if (_removed[i])
                TakeOut(i);
            else
                SetComma(i);
        }
        for (int i = 0; i < _inserted.Count; i++)
            PutIn(i);
    }

    private bool IsLastKept(int element) => Array.IndexOf(_removed, false, element + 1) < 0;

    /// <summary>The place of the comma after an element of the file, or -1.</summary>
    private int Comma(int element)
    {
        int at = file.AfterTrivia(owner.Items[element].End);
        return file.Utf8[at] == ',' ? at : -1;
    }

    private void SetComma(int element)
    {
        int comma = Comma(element), end = owner.Items[element].End;
        bool needed = !IsLastKept(element) || (_inserted.Count > 0 && _inserted[^1].After >= element);
        if (needed && comma < 0)
            edits.Insert(end, ",");
        else if (!needed && comma >= 0)
            edits.Remove(comma, comma + 1);
    }

    private void TakeOut(int element)
    {
        JsonPiece piece = owner.Items[element];
        int start = piece.NameStart, end = piece.End, comma = Comma(element);
        if (comma >= 0 && file.Utf8[end..comma].IndexOf((byte)'/') < 0)
            end = comma + 1;
        else if (comma >= 0)
            edits.Remove(comma, comma + 1);                  // a comment stands between, and stays
        int rest = file.AfterBlanks(end);
        if (file.Utf8[rest] is (byte)'}' or (byte)']')
            edits.Remove(file.BeforeBlanks(start), end);
        else if (!file.EndsLine(rest))
            edits.Remove(start, rest);
        else if (file.StartsLine(start))
            edits.Remove(file.BeforeBlanks(start), file.AfterNewline(rest));
        else
            edits.Remove(file.BeforeBlanks(start), end);
    }

    private void PutIn(int inserted)
    {
        (int after, JsonPiece piece, string? text) = _inserted[inserted];
        int before = after < 0 ? -1 : Array.LastIndexOf(_removed, false, after);
        int anchor = before >= 0 ? before : Array.IndexOf(_removed, false);
        JsonPiece neighbour = owner.Items[anchor];
        string? indent = file.Indent(neighbour.NameStart);
        string gap = indent is null ? file.Gap : file.Newline + indent, written = text ?? Written(piece, indent);
        if (before < 0)
        {
            edits.Insert(neighbour.NameStart, written + "," + gap);
            return;
        }
        int at = Comma(anchor) is var comma and >= 0 ? comma + 1 : neighbour.End;
        if (indent is not null)
            at = file.EndOfLine(at);
        edits.Insert(at, gap + written + (IsLastKept(anchor) && inserted == _inserted.Count - 1 ? "" : ","));
    }

    /// <summary>Into an empty list.</summary>
    private void Fill()
    {
        int start = owner.Start + 1, end = owner.End - 1;
        bool isBlank = file.Utf8[start..end].IndexOf((byte)'/') < 0;
        edits.Replace(start, isBlank ? end : start, file.WriteItems(_inserted.ConvertAll(i => i.Piece), source, file.Indent(owner.NameStart)));
    }

    private string Written(JsonPiece piece, string? indent)
    {
        JsonPiece? neighbour = piece.Name is null ? owner.Items.Find(i => i.Items.Count > 0) : null;
        return file.Write(piece, source, indent, neighbour is null ? null : file.IsOnOneLine(neighbour));
    }
}
