namespace Saponify;

/// <summary>One uncertain input of a superfat: n(fat), n(acid) or n(alkali) may differ from its middle by up to a half width, in mol.</summary>
internal readonly record struct Cause(FormulaPath Path, MarginCauseKind Kind, string What, CauseOf Of, double HalfWidth);
