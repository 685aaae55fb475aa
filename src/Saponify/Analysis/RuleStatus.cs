namespace Saponify;

/// <summary>What became of a rule in one analysis.</summary>
public enum RuleStatus : byte
{
    /// <summary>It ran; silence means that it found nothing.</summary>
    Ran,

    /// <summary>It had nothing to look at, or a circumstance it needs is not given.</summary>
    NotApplicable,

    /// <summary>The configuration switches it off.</summary>
    Disabled,

    /// <summary>It threw; its findings are withdrawn.</summary>
    Failed,
}
