namespace Saponify;

/// <summary>What can be done with a batch as it stands.</summary>
public enum BatchChoiceKind : byte
{
    /// <summary>Leave it as it is.</summary>
    Accept,

    /// <summary>Weigh the alkali that the real weights ask for.</summary>
    WeighAlkali,

    /// <summary>Add some of a fat.</summary>
    AddFat,

    /// <summary>Add alkali, dissolved in water.</summary>
    AddLye,

    /// <summary>Don't use the batch.</summary>
    Discard,
}
