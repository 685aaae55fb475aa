namespace Saponify.Internals;

/// <summary>A result that notebooks show as HTML.</summary>
internal interface IShownAsHtml
{
    /// <summary>The fragment.</summary>
    string ToHtml();
}
