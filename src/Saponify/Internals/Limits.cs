namespace Saponify.Internals;

/// <summary>The least and the greatest that a quantity may be, in the unit it is stored in: said once, for constructor, file and option.</summary>
internal readonly record struct Limits(double Low, double High)
{
    /// <summary>False for what is not a number.</summary>
    internal bool Holds(double value) => value >= Low && value <= High;
}
