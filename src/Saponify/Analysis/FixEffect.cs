namespace Saponify;

/// <summary>What a fix does to the product.</summary>
public enum FixEffect : byte
{
    /// <summary>The soap stays what it was meant to be.</summary>
    KeepsProduct,

    /// <summary>The soap becomes another one: other fats, another superfat, another scent.</summary>
    ChangesProduct,
}
