namespace Saponify;

/// <summary>An object of the formula file: its members, in the order in which they are written.</summary>
internal sealed record Shape(string Name, string Description, Member[] Members)
{
    internal int IndexOf(string member)
    {
        for (int i = 0; i < Members.Length; i++)
        {
            if (string.Equals(Members[i].Name, member, StringComparison.Ordinal))
                return i;
        }
        return -1;
    }
}
