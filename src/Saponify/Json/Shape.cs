namespace Saponify;

/// <summary>An object of the formula file: its members, in the order in which they are written.</summary>
internal sealed record Shape(string Name, string Description, Member[] Members)
{
    /// <summary>Members that exclude each other.</summary>
    internal Alternatives[] OneOf { get; init; } = [];

    /// <summary>Members that are read in the light of each other: when one changes, an edit looks at all of them.</summary>
    internal Member[][] Together { get; init; } = [];

    internal int IndexOf(Member member)
    {
        for (int i = 0; i < Members.Length; i++)
        {
            if (ReferenceEquals(Members[i], member))
                return i;
        }
        throw new ArgumentException($"{Name} has no member {member.Name}", nameof(member));
    }

    internal int IndexOf(string? member)
    {
        for (int i = 0; i < Members.Length; i++)
        {
            if (Members[i].Name == member)
                return i;
        }
        return -1;
    }
}
