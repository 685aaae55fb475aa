using System.Globalization;

namespace Saponify;

/// <summary>A JSON pointer under construction: made into text only when a problem is reported.</summary>
internal sealed class FilePointer(FilePointer? parent, string? name, int index)
{
    internal static FilePointer Root { get; } = new(null, null, -1);

    internal FilePointer Member(string member) => new(this, member, -1);

    internal FilePointer Item(int place) => new(this, null, place);

    public override string ToString() => parent is null ? "" : parent + "/" + (name is null
        ? index.ToString(CultureInfo.InvariantCulture)
        : name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
}
