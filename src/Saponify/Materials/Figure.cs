namespace Saponify;

/// <summary>A figure with its range, its sources and how well they support it. Immutable; equality by content.</summary>
/// <typeparam name="T">The type of the figure, for example <see cref="SaponificationValue"/>.</typeparam>
public sealed record Figure<T> where T : struct
{
    /// <summary>Makes a figure.</summary>
    /// <param name="value">The value to compute with.</param>
    /// <param name="evidence">How well it is supported.</param>
    /// <param name="sources">Keys of the sources; at least one.</param>
    /// <exception cref="ArgumentException">No source, or a blank one: a figure without a source is refused.</exception>
    public Figure(T value, Evidence evidence, ValueList<string> sources)
    {
        if (sources.Count == 0 || sources.Any(string.IsNullOrWhiteSpace))
            throw new ArgumentException("A figure needs a source.", nameof(sources));
        Value = value;
        Evidence = evidence;
        Sources = sources;
    }

    /// <summary>The value to compute with: for a published range its middle, unless the member that returns it says otherwise.</summary>
    public T Value { get; }

    /// <summary>Low end of the range; null when the source gives only an upper limit.</summary>
    public T? Low { get; init; }

    /// <summary>High end of the range; null when the source gives only a lower limit.</summary>
    public T? High { get; init; }

    /// <summary>How well the figure is supported.</summary>
    public Evidence Evidence { get; }

    /// <summary>Keys of the sources, as in the table of sources; for an own figure the text its owner gave.</summary>
    public ValueList<string> Sources { get; }

    /// <summary>True when the figure is the user's own (a certificate, an overlay), not from the reference tables.</summary>
    public bool IsOwn { get; init; }

    /// <summary>What to know about it, or null.</summary>
    public string? Note { get; init; }
}
