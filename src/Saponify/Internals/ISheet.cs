namespace Saponify.Internals;

/// <summary>What results are written onto for people: plain text, or HTML.</summary>
internal interface ISheet
{
    /// <summary>Name of the whole, once at the top.</summary>
    void Name(string name);

    /// <summary>Begins a part.</summary>
    void Title(string title);

    /// <summary>Begins a part without a title.</summary>
    void Gap();

    /// <summary>An amount and what it is of.</summary>
    void Row(string amount, string what);

    /// <summary>A sentence.</summary>
    void Line(string text);

    /// <summary>A sentence nobody may miss.</summary>
    void Beware(string text);

    /// <summary>One of several sentences of equal weight.</summary>
    void Item(string text);
}
