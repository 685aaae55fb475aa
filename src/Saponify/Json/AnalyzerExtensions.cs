namespace Saponify;

/// <summary>Analyzes formula files, so that findings carry line and column.</summary>
public static class AnalyzerExtensions
{
    /// <summary>Analyzes the formula of a file.</summary>
    /// <param name="analyzer">The analyzer.</param>
    /// <param name="file">A file that was read without problems.</param>
    /// <param name="setup">The circumstances; those of the file when left out.</param>
    /// <param name="cancellation">Asks for an end.</param>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentException">The file has problems and no formula.</exception>
    /// <exception cref="OperationCanceledException">An end was asked for.</exception>
    public static AnalysisReport Analyze(this FormulaAnalyzer analyzer, FormulaFile file, BatchSetup? setup = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(analyzer);
        ArgumentNullException.ThrowIfNull(file);
        Formula formula = file.Formula ?? throw new ArgumentException("The file has problems: there is no formula to analyze.", nameof(file));
        return analyzer.Analyze(formula, setup ?? file.Setup, path => Nearest(file, path), cancellation);
    }

    /// <summary>The place itself, or the nearest above it that the file writes.</summary>
    private static Place? Nearest(FormulaFile file, FormulaPath path)
    {
        for (FormulaPath? at = path; at is not null; at = at.Parent)
        {
            if (file.Locate(at) is { } place)
                return place;
        }
        return null;
    }
}
