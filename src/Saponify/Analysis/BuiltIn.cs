using Saponify.Analysis.Rules;

namespace Saponify.Analysis;

/// <summary>The rules of the library.</summary>
internal static class BuiltIn
{
    internal static readonly FormulaRule[] Rules =
    [
        new KeepAlkaliWithinDemand(),
    ];
}
