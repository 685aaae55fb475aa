namespace Saponify.Analysis;

/// <summary>Ready-made configurations.</summary>
public enum Preset : byte
{
    /// <summary>Every rule at its own severity.</summary>
    Default,

    /// <summary>For learners: hidden advice is shown, and rules that are off by default run as advice.</summary>
    Learner,

    /// <summary>For those who sell: a warning counts as an error.</summary>
    Strict,

    /// <summary>Everything off that may be off; lye safety stays.</summary>
    Off,
}
