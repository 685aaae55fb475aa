namespace Saponify;

/// <summary>Which hydroxide an alkali is.</summary>
public enum AlkaliKind : byte
{
    /// <summary>NaOH, caustic soda, 39.997 g/mol: hard soap.</summary>
    SodiumHydroxide,

    /// <summary>KOH, caustic potash, 56.105 g/mol: soft soap.</summary>
    PotassiumHydroxide,
}
