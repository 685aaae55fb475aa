namespace Saponify;

/// <summary>
/// What to mind when handling lye. General caution, no medical advice and no replacement for the safety data sheet of your alkali, local
/// rules and trained people.
/// </summary>
public static class LyeCautions
{
    /// <summary>
    /// The usual cautions, each one sentence in English. Sources: international chemical safety cards ICSC 0360 (sodium hydroxide) and
    /// ICSC 0357 (potassium hydroxide); the rules on glass and on milk are common practice, no source.
    /// </summary>
    public static ValueList<string> ForHandlingLye { get; } =
    [
        "Lye burns skin and eyes, at times without pain at first: wear tight goggles, alkali-proof gloves, long sleeves and closed shoes.",
        "Stir the alkali slowly into cold liquid, never liquid onto alkali; it heats up strongly and may spatter.",
        "Work with fresh air, and keep children, pets, acids and aluminium, zinc or tin ware away.",
        "Use stainless steel, polypropylene or HDPE made for heat; glass may crack.",
        "On skin or in the eyes: rinse at once with much water for at least 15 minutes, take off wet clothing and contact lenses, then see a doctor.",
        "Follow the safety data sheet of your alkali and your local rules; they decide.",
    ];
}
