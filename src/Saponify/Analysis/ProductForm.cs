namespace Saponify;

/// <summary>What is to come out of a batch.</summary>
public enum ProductForm : byte
{
    /// <summary>A bar that is cut and cured.</summary>
    Bar,

    /// <summary>A paste or cream soap, such as shaving soap in a bowl.</summary>
    Soft,
}
