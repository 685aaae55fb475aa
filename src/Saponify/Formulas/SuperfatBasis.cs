namespace Saponify;

/// <summary>Which fat a superfat is counted against.</summary>
public enum SuperfatBasis : byte
{
    /// <summary>All fat: recipe fats, late fats, and the fat in liquids and additives.</summary>
    AllFat,

    /// <summary>The fat lines of the formula, recipe and late, as if liquids and additives had no fat.</summary>
    ListedFats,
}
