using Saponify.Internals;

namespace Saponify.Analysis;

/// <summary>A fix as a rule hands it out: a pure function from formula to formula. The report binds it to its formula. Immutable.</summary>
public sealed class FixOffer
{
    /// <summary>Makes an offer; only where it will certainly work.</summary>
    /// <param name="key">Groups equal fixes, for example <c>KeepStatedSuperfat</c>; not blank.</param>
    /// <param name="title">What it does, with the new value; invariant, no closing stop.</param>
    /// <param name="effect">Whether the soap stays what it was.</param>
    /// <param name="apply">The change; must not touch anything else.</param>
    /// <exception cref="ArgumentException">A blank text.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="apply"/> is null.</exception>
    public FixOffer(string key, string title, FixEffect effect, Func<Formula, Formula> apply)
    {
        ArgumentNullException.ThrowIfNull(apply);
        Key = Guard.Text(key, "The key of a fix");
        Title = Guard.Text(title, "The title of a fix");
        Effect = Guard.Known(effect, "The effect of a fix");
        Apply = apply;
    }

    /// <summary>Groups equal fixes.</summary>
    public string Key { get; }

    /// <summary>What it does.</summary>
    public string Title { get; }

    /// <summary>Whether the soap stays what it was.</summary>
    public FixEffect Effect { get; }

    /// <summary>The change.</summary>
    public Func<Formula, Formula> Apply { get; }
}
