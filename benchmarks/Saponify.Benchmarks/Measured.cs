namespace Saponify.Benchmarks;

/// <summary>The median time of one call, and what it allocates.</summary>
internal sealed record Measured(double Nanoseconds, long Bytes);
