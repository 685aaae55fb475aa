namespace Saponify.Internals;

/// <summary>A line of a formula, named by an id that is unique in its list.</summary>
internal interface ILine<TSelf>
{
    string Line { get; }

    TSelf WithLine(string line);
}
