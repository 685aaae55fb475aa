using BenchmarkDotNet.Running;
using Saponify.Benchmarks;

if (args is ["growth"])
{
    (double fats, double formulas) = Growth.Exponents(Console.Out);
    Console.WriteLine(FormattableString.Invariant($"exponent with fats {fats:F3}, with formulas {formulas:F3}"));
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
}
