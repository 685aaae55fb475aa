namespace Saponify.Internals;

/// <summary>The least and the greatest that a quantity may be, in the unit it is stored in: said once, for constructor, file and option.</summary>
internal readonly record struct Limits(double Low, double High);
