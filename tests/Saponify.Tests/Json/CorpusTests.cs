using Saponify.Fuzz;
using Saponify.Tests.Support;

namespace Saponify.Tests.Json;

/// <summary>What the fuzzer starts from, and whatever it found, is read without an exception and with every promise kept.</summary>
public class CorpusTests
{
    public static TheoryData<string> Targets => [.. Readers.All.Keys];

    [Theory]
    [MemberData(nameof(Targets))]
    public void EverySeed_IsReadWithItsPromisesKept(string target)
    {
        string[] seeds = Directory.GetFiles(Repository.Path("tests", "Saponify.Fuzz", "corpus", target));
        Assert.NotEmpty(seeds);
        foreach (byte[] seed in seeds.Select(File.ReadAllBytes))
        {
            Readers.All[target](seed);
            // cut off anywhere it is another text from outside
            for (int length = 0; length < seed.Length; length += 1 + (seed.Length / 100))
                Readers.All[target](seed[..length]);
        }
    }
}
