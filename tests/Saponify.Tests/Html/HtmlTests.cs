using System.Text;
using System.Xml.Linq;
using FsCheck;
using FsCheck.Fluent;
using Saponify.Analysis;
using Saponify.Tests.Support;

namespace Saponify.Tests.Html;

/// <summary>Results as HTML: what notebooks show.</summary>
public class HtmlTests
{
    private const string Hostile = "<script>alert(\"1\")</script> & 'soap' \u0007\uffff";

    private static readonly Scale s_scale = new(Mass.FromGrams(1));

    private static Formula Example(string name) => FormulaFile.Read(File.ReadAllBytes(Repository.Path("data", "examples", name + ".json")), Pantry.Reference).Formula!;

    private static Formula Faulty => new(Hostile)
    {
        Fats = [Fat.Own("odd", Hostile, SaponificationValue.FromMilligramsKohPerGram(190), Hostile).Weighing(Mass.FromGrams(400)), Pantry.Reference.Fat("lard").Weighing(Mass.FromGrams(100))],
        Alkali = AlkaliPlan.ForSuperfat(Ratio.FromPercent(-3), Alkali.PotassiumHydroxide(Purity.AtLeast(Ratio.FromPercent(85)))),
        Liquids = LiquidPlan.LyeConcentration(Ratio.FromPercent(60)),
        Suppressions = [new("SFY2007", "alkali", Hostile)],
    };

    [Fact]
    public void Plan_IsTheApprovedOne() => Golden.Matches(Example("oat-and-cream").Plan().ToHtml(), "html", "plan.html");

    [Fact]
    public void Margin_IsTheApprovedOne() => Golden.Matches(Example("shaving-soap").Plan().Margin(s_scale)!.ToHtml(), "html", "margin.html");

    [Fact]
    public void Report_IsTheApprovedOne() => Golden.Matches(FormulaAnalyzer.Default.Analyze(Faulty, new() { Scale = s_scale }).ToHtml(), "html", "report.html");

    [Fact]
    public void CleanReport_SaysThatItIs()
    {
        XElement html = XElement.Parse(FormulaAnalyzer.Default.With(AnalyzerConfig.Of(Preset.Off)).Analyze(Example("market-day-bar")).ToHtml());
        Assert.Contains("Safe to weigh: no rule reports an error.", html.Value, StringComparison.Ordinal);
        Assert.EndsWith("Nothing found.", html.Value.TrimEnd(), StringComparison.Ordinal);
        Assert.Empty(html.Descendants("th"));
    }

    [Fact]
    public void Scores_AreTheApprovedOnes() => Golden.Matches(Example("market-day-bar").Scores().ToHtml(), "html", "scores.html");

    [Fact]
    public void BarThatCantBeScored_SaysWhy() =>
        Assert.Contains("<strong>Not scored: ", Faulty.Scores().ToHtml(), StringComparison.Ordinal);

    /// <summary>Text and HTML are written by the same code; the HTML loses nothing of it and stays well formed.</summary>
    [Law]
    public Property Plan_HasEveryLineOfTheText() => Prop.ForAll(Any.Formulas.Arbitrary(), formula =>
    {
        BatchPlan plan = formula.Plan();
        string shown = Squeezed(XElement.Parse(plan.ToHtml()).Value);
        Assert.All(plan.ToString().Split('\n'), line => Assert.Contains(Squeezed(line.StartsWith("  - ", StringComparison.Ordinal) ? line[4..] : line), shown, StringComparison.Ordinal));
    });

    [Fact]
    public void HostileText_StaysText()
    {
        Formula formula = Faulty;
        foreach (string html in (string[])[formula.Plan().ToHtml(), formula.Plan().OnScale(s_scale).ToHtml(), formula.Plan().Margin(new Scale(Mass.FromGrams(50)))!.ToHtml(), FormulaAnalyzer.Default.Analyze(formula).ToHtml(), formula.Scores().ToHtml()])
        {
            XElement fragment = XElement.Parse(html);
            Assert.Empty(fragment.Descendants("script"));
            Assert.Contains("<script>alert(\"1\")</script> & 'soap' \ufffd\ufffd", fragment.Value, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void EveryCulture_GivesTheSame()
    {
        BatchPlan plan = Example("oat-and-cream").Plan();
        string All() => plan.ToHtml() + plan.OnScale(s_scale).ToHtml() + plan.Margin(s_scale)!.ToHtml() + FormulaAnalyzer.Default.Analyze(plan.Formula).ToHtml() + plan.Scores().ToHtml();
        string expected = All();
        Assert.All(InCulture.Names, culture => Assert.Equal(expected, InCulture.Run(culture, All)));
    }

    [Fact]
    public void ScalePlan_ShowsWhatAStepIsWorth() =>
        Assert.Contains("One step of the alkali&#39;s scale, 1 g, is worth", Example("market-day-bar").Plan().OnScale(s_scale).ToHtml(), StringComparison.Ordinal);

    /// <summary>A kernel knows the library by names only: an attribute, a factory, a formatter.</summary>
    [Theory]
    [InlineData(typeof(BatchPlan))]
    [InlineData(typeof(ScalePlan))]
    [InlineData(typeof(Margin))]
    [InlineData(typeof(AnalysisReport))]
    [InlineData(typeof(BarScores))]
    public void Kernel_FindsTheFormatterByNames(Type type)
    {
        object attribute = type.GetCustomAttributes(false).Single(a => a.GetType().FullName == "Microsoft.DotNet.Interactive.Formatting.TypeFormatterSourceAttribute");
        Assert.Equal(["text/html"], (IEnumerable<string>)Get(attribute, "PreferredMimeTypes")!);
        object source = Activator.CreateInstance((Type)Get(attribute, "FormatterSourceType")!)!;
        object formatter = Assert.Single((IEnumerable<object>)Call(source, "CreateTypeFormatters")!);
        Assert.Equal("text/html", Get(formatter, "MimeType"));
        BatchPlan plan = Example("market-day-bar").Plan();
        object[] results = [plan, plan.OnScale(s_scale), plan.Margin(s_scale)!, FormulaAnalyzer.Default.Analyze(plan.Formula), plan.Scores()];
        using StringWriter writer = new();
        Assert.Equal(true, Call(formatter, "Format", results.Single(type.IsInstanceOfType), writer));
        Assert.StartsWith("<div class=\"saponify\">", writer.ToString(), StringComparison.Ordinal);
        Assert.Equal(false, Call(formatter, "Format", "something else", writer));
    }

    private static object? Get(object of, string property) => of.GetType().GetProperty(property)!.GetValue(of);

    private static object? Call(object of, string method, params object[] arguments) => of.GetType().GetMethod(method)!.Invoke(of, arguments);

    private static string Squeezed(string text) => string.Concat(text.EnumerateRunes().Where(r => !Rune.IsWhiteSpace(r)));
}
