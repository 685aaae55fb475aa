using S = Saponify.FormulaShapes;

namespace Saponify;

/// <summary>From JSON to an accepted finding: in a formula file and in a configuration.</summary>
internal static class SuppressionBinder
{
    internal static Suppression? Bind(BoundObject item)
    {
        (string? rule, string? path, string? reason, string? author, DateOnly? until) =
            (item.Text(S.SuppressionRule), item.Text(S.SuppressionPath), item.Text(S.SuppressionReason), item.Text(S.SuppressionAuthor), item.Date(S.SuppressionUntil));
        return rule is null ? null : new(rule, path ?? "", reason ?? "") { Author = author, Until = until };
    }
}
