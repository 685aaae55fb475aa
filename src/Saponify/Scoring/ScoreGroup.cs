namespace Saponify;

/// <summary>Where a score is met.</summary>
public enum ScoreGroup : byte
{
    /// <summary>On the dish: hardness, wear resistance.</summary>
    OnTheDish,

    /// <summary>In the hand: lather volume, lather stability.</summary>
    InTheHand,

    /// <summary>On the skin: cleansing, conditioning.</summary>
    OnTheSkin,

    /// <summary>On the shelf: oxidation risk.</summary>
    OnTheShelf,
}
