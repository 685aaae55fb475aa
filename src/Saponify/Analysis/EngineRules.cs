namespace Saponify.Analysis;

/// <summary>What the engine itself may say. None of it can be suppressed.</summary>
internal static class EngineRules
{
    internal static readonly RuleDescriptor RuleFailed = new("SFY0001", "LetNoRuleThrow", Severity.Error, "A rule failed",
        "A rule that throws has looked at nothing: its silence must not pass for a clean formula.")
    {
        Messages = [new("Failed", "rule {rule} failed with {exception}: {message}; its findings are withdrawn")],
        Floor = Severity.Error,
    };

    internal static readonly RuleDescriptor SuppressionWithoutReason = new("SFY0002", "GiveEachSuppressionAReason", Severity.Warning, "A suppression has no reason",
        "Whoever reads the formula later can't judge what was accepted and why; the suppression is not applied.")
    {
        Messages = [new("NoReason", "the suppression of {rule} at \"{path}\" has no reason and is not applied")],
        Floor = Severity.Warning,
    };

    internal static readonly RuleDescriptor SuppressionNotNeeded = new("SFY0003", "RemoveSuppressionsNotNeeded", Severity.Info, "A suppression covers nothing",
        "A suppression that covers nothing now may hide a finding tomorrow.")
    {
        Messages = [new("NotNeeded", "the suppression of {rule} at \"{path}\" covers nothing")],
    };

    internal static readonly RuleDescriptor SuppressionExpired = new("SFY0004", "RenewOrRemoveExpiredSuppressions", Severity.Warning, "A suppression has expired",
        "What was accepted for a time is accepted no longer; the suppression is not applied.")
    {
        Messages = [new("Expired", "the suppression of {rule} at \"{path}\" held until {until} and is not applied")],
        Floor = Severity.Warning,
    };

    internal static readonly RuleDescriptor[] All = [RuleFailed, SuppressionWithoutReason, SuppressionNotNeeded, SuppressionExpired];
}
