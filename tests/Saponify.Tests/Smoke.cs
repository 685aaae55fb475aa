namespace Saponify.Tests;

public class Smoke
{
    [Fact]
    public void Loads() => Assert.True(Pantry.Reference.Fats.Count >= 100);
}
