namespace Saponify.PublishedValues;

/// <summary>Source: CIAAW, abridged standard atomic weights 2021.</summary>
public class MolarMassTests
{
    [Theory]
    [InlineData(AlkaliKind.SodiumHydroxide, 0.712895)]
    public void Ratio_SodiumToPotassiumHydroxide_IsThatOfMolarMasses(AlkaliKind kind, double expected)
    {
        Assert.Equal(AlkaliKind.SodiumHydroxide, kind);
        SaponificationValue value = SaponificationValue.FromMilligramsKohPerGram(1000);
        Assert.Equal(expected, value.GramsNaohPerGram, 6);
    }
}
