using System.Buffers;
using System.Text;
using System.Text.Unicode;

namespace Saponify;

/// <summary>
/// A formula file: JSON by the format <c>saponify-formula/1</c>, read strictly, with every fault of meaning at its place. Immutable,
/// thread-safe.
/// </summary>
/// <remarks>
/// Ids of problems: SFY1001 syntax, 1002 unknown member, 1003 duplicate member, 1004 missing member, 1005 wrong type, 1006 no amount of
/// the kind wanted, 1007 out of range, 1008 unknown material, 1009 unknown word, 1010 members that exclude each other, 1011 shares that
/// don't add up, 1012 another format, 1013 id of a line, 1014 too large or too many, 1017 no density. Ids of notices: 1015 other
/// saponification value than the tables, 1016 volume converted, 1018 other tables.
/// </remarks>
public sealed class FormulaFile
{
    /// <summary>The largest file that is read, in bytes: 1 MB.</summary>
    public const int LargestBytes = 1_000_000;

    private readonly byte[] _utf8;
    private readonly JsonPiece? _root;
    private readonly Pantry _pantry;

    private FormulaFile(byte[] utf8, JsonPiece? root, Pantry pantry, Formula? formula, ValueList<Problem> problems, ValueList<Problem> notices)
    {
        _utf8 = utf8;
        _root = root;
        _pantry = pantry;
        Formula = formula;
        Problems = problems;
        Notices = notices;
    }

    /// <summary>The formula; null when the file has problems: a file is never half-understood.</summary>
    public Formula? Formula { get; }

    /// <summary>The circumstances that the file states, such as the scale; nothing known when it states none or has problems.</summary>
    public BatchSetup Setup { get; private init; } = BatchSetup.Unknown;

    /// <summary>What is wrong, in the order of the file: all faults of meaning, or the first of syntax. Empty when there is a formula.</summary>
    public ValueList<Problem> Problems { get; }

    /// <summary>What is worth knowing and does not hinder: figures that differ from the tables, volumes that were converted.</summary>
    public ValueList<Problem> Notices { get; }

    /// <summary>Reads a formula file. Faults are in <see cref="Problems"/>, never exceptions.</summary>
    /// <param name="utf8">The bytes of the file, UTF-8, with or without a byte order mark, at most <see cref="LargestBytes"/>.</param>
    /// <param name="pantry">Where its materials are looked up.</param>
    /// <exception cref="ArgumentNullException"><paramref name="pantry"/> is null.</exception>
    public static FormulaFile Read(ReadOnlySpan<byte> utf8, Pantry pantry)
    {
        ArgumentNullException.ThrowIfNull(pantry);
        byte[] copy = utf8.Length > LargestBytes ? [] : utf8.ToArray();
        if (JsonPiece.Open(copy, utf8.Length, out Problem? fault) is not { } root)
            return new(copy, null, pantry, null, [fault!], default);
        ShapeReader reader = new(copy);
        FormulaBinder binder = new(reader, pantry);
        Formula? formula = binder.Bind(root);
        return new(copy, root, pantry, formula, reader.Problems.ToProblems(), reader.Notices.ToProblems()) { Setup = formula is null ? BatchSetup.Unknown : binder.Setup };
    }

    /// <summary>Reads a formula file from text.</summary>
    /// <param name="json">The text.</param>
    /// <param name="pantry">Where its materials are looked up.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public static FormulaFile Read(string json, Pantry pantry)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(pantry);
        byte[] utf8 = new byte[Encoding.UTF8.GetByteCount(json)];
        return Utf8.FromUtf16(json, utf8, out _, out int written, replaceInvalidSequences: false) == OperationStatus.Done
            ? Read(utf8, pantry)
            : new(utf8, null, pantry, null, [new(ProblemIds.Syntax, new PlaceCounter(utf8).At(written, 0), "", "half of a surrogate pair stands here, which is no Unicode text", null)], default);
    }

    /// <summary>Writes a formula as a file: UTF-8, LF, every amount in the unit it was written in. Read again, it gives an equal formula.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="pantry">The tables it rests on; the file states their version.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public static byte[] Write(Formula formula, Pantry pantry)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(pantry);
        return FormulaWriter.Write(formula, pantry);
    }

    /// <summary>
    /// The bytes of this file with a changed formula in it. Only what has changed is replaced: order, spacing and comments stay, new
    /// lines look like their neighbours, removed ones go with their comma. A formula equal to <see cref="Formula"/> gives the same bytes.
    /// </summary>
    /// <param name="changed">The formula that the file shall hold; reading the result with the same pantry gives it back.</param>
    /// <exception cref="ArgumentNullException"><paramref name="changed"/> is null.</exception>
    /// <exception cref="ArgumentException">It can't be read back: it holds a material that the pantry lacks or has with other figures, or is too large.</exception>
    /// <exception cref="InvalidOperationException">The file has problems, so that nobody knows what it says.</exception>
    public byte[] Edit(Formula changed)
    {
        ArgumentNullException.ThrowIfNull(changed);
        if (Formula is null)
            throw new InvalidOperationException("A file with problems can't be edited: mend them first.");
        if (changed.Equals(Formula))
            return [.. _utf8];
        byte[] edited = new FormulaEditor(_utf8, _root!, FormulaWriter.Write(Formula, _pantry), FormulaWriter.Write(changed, _pantry)).Edit();
        return changed.Equals(Read(edited, _pantry).Formula)
            ? edited
            : throw new ArgumentException("The formula can't be written so that it reads back: it holds a material that the pantry lacks or has with other figures, or it is too large.", nameof(changed));
    }

    /// <summary>Where a place of the formula stands in the file; null when the file does not write it.</summary>
    /// <param name="path">The place.</param>
    /// <exception cref="ArgumentNullException"><paramref name="path"/> is null.</exception>
    public Place? Locate(FormulaPath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return _root?.Find(path.ToJsonPointer()) is { } piece ? new PlaceCounter(_utf8).At(piece.Start, piece.End - piece.Start) : null;
    }
}
