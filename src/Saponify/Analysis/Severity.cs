namespace Saponify;

/// <summary>How grave a finding is. A promise about false alarms, chosen from this scale.</summary>
public enum Severity : byte
{
    /// <summary>Only on request.</summary>
    Hidden,

    /// <summary>Advice.</summary>
    Info,

    /// <summary>Hardly ever wrong.</summary>
    Warning,

    /// <summary>Certainly wrong or unsafe.</summary>
    Error,
}
