namespace Saponify.Cli;

/// <summary>Exit codes of the command line.</summary>
internal static class ExitCode
{
    /// <summary>All is well.</summary>
    internal const int Fine = 0;

    /// <summary>The input was read, and there are obstacles or errors in it.</summary>
    internal const int Findings = 1;

    /// <summary>The input can't be read.</summary>
    internal const int Unreadable = 2;

    /// <summary>Wrong use of the command line.</summary>
    internal const int WrongUse = 64;
}
