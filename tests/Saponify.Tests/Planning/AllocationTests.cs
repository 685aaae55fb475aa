using Saponify.Tests.Support;

namespace Saponify.Tests.Planning;

/// <summary>Budgets of memory; time is for the benchmarks.</summary>
public class AllocationTests
{
    private static readonly Formula s_milkBar = FormulaFile.Read(File.ReadAllBytes(Repository.Path("data", "examples", "goat-milk-frozen.json")), Pantry.Reference).Formula!;

    [Fact]
    public void Balance_AllocatesNothing() => Assert.Equal(0, BytesOf(static () => s_milkBar.Balance().AlkaliAsWeighed));

    [Fact]
    public void Plan_AllocatesAtMostOneKilobyte() => Assert.InRange(BytesOf(static () => s_milkBar.Plan().Balance.AlkaliAsWeighed), 1, 1024);

    private static long BytesOf(Func<Mass> code)
    {
        code();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
            code();
        return (GC.GetAllocatedBytesForCurrentThread() - before) / 100;
    }
}
