using System.Globalization;

namespace Saponify.Tests.Support;

/// <summary>Runs code under the cultures that most often break programs: decimal commas, other digits, other casing.</summary>
public static class InCulture
{
    public static readonly string[] Names = ["tr-TR", "de-DE", "ru-RU", "fr-FR", "ar-SA"];

    public static T Run<T>(string name, Func<T> code)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
            return code();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
