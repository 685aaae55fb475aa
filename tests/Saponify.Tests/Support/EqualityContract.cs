namespace Saponify.Tests.Support;

/// <summary>What every value type of the library promises about equality.</summary>
public static class EqualityContract
{
    public static void Test<T>(T value, T equal, params T[] different) where T : IEquatable<T>
    {
        Assert.True(value.Equals(equal));
        Assert.True(equal.Equals(value));
        Assert.True(value.Equals((object)equal));
        Assert.Equal(value.GetHashCode(), equal.GetHashCode());
        Assert.False(value.Equals(null));
        Assert.False(value.Equals("something else"));
        foreach (T other in different)
        {
            Assert.False(value.Equals(other));
            Assert.False(other.Equals(value));
        }
    }
}
