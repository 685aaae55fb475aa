namespace Saponify.Testing;

/// <summary>A rule does not do what its test expects, or breaks the contract of rules. The message says which and how.</summary>
public sealed class RuleVerificationException : Exception
{
    /// <summary>Makes the exception.</summary>
    public RuleVerificationException()
    {
    }

    /// <summary>Makes the exception.</summary>
    /// <param name="message">What was expected, and what came.</param>
    public RuleVerificationException(string message)
        : base(message)
    {
    }

    /// <summary>Makes the exception.</summary>
    /// <param name="message">What was expected, and what came.</param>
    /// <param name="innerException">What caused it.</param>
    public RuleVerificationException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
