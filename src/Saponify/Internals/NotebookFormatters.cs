using System.Diagnostics.CodeAnalysis;

namespace Saponify.Internals;

/// <summary>What <see cref="Microsoft.DotNet.Interactive.Formatting.TypeFormatterSourceAttribute"/> names; kernels make one and find its members by their names.</summary>
[SuppressMessage("Performance", "CA1822", Justification = "Kernels look for members of an instance.")]
internal sealed class NotebookFormatters
{
    internal const string Html = "text/html";

    public IEnumerable<object> CreateTypeFormatters() => [new Formatter()];

    private sealed class Formatter
    {
        public string MimeType => Html;

        public bool Format(object instance, TextWriter writer)
        {
            if (instance is not IShownAsHtml shown)
                return false;
            writer.Write(shown.ToHtml());
            return true;
        }
    }
}
