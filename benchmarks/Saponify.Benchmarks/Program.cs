using BenchmarkDotNet.Running;
using Saponify.Benchmarks;

switch (args)
{
    case ["table", .. var rest]:
        return ResultTable.Write(Path.Combine("benchmarks", "results", "TABLE.md"), rest is [var date, ..] ? date : null) ? 0 : 1;
    case ["growth"]:
        foreach ((string what, double exponent) in Growth.Exponents(Console.Out))
            Console.WriteLine(FormattableString.Invariant($"{exponent:F3} {what}"));
        return 0;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        return 0;
}
