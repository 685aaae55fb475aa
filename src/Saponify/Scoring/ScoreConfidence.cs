namespace Saponify;

/// <summary>How far a score can be trusted to put two bars in the right order, worst first. None is a measurement.</summary>
public enum ScoreConfidence : byte
{
    /// <summary>Reasoned from single acids; hardly a check on whole bars, or outside what the model describes.</summary>
    Low,

    /// <summary>Agrees with a few published pairs or trends, misses others.</summary>
    LowToFair,

    /// <summary>Orders most published cases correctly.</summary>
    Fair,
}
