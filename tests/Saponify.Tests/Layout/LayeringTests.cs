using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Saponify.Tests.Support;

namespace Saponify.Tests.Layout;

/// <summary>Layers are folders, and they point one way.</summary>
public class LayeringTests
{
    /// <summary>Each layer with the layers it may use beside itself.</summary>
    private static readonly Dictionary<string, string[]> s_allowed = new()
    {
        ["Internals"] = ["Materials"],
        ["Materials"] = ["Internals"],
        ["Formulas"] = ["Internals", "Materials"],
        ["Planning"] = ["Internals", "Materials", "Formulas"],
        ["Making"] = ["Internals", "Materials", "Formulas", "Planning", "Reference"],
        ["Analysis"] = ["Internals", "Materials", "Formulas", "Planning", "Making", "Scoring"],
        ["Reference"] = ["Internals", "Materials"],
        ["Scoring"] = ["Internals", "Materials", "Formulas", "Planning"],
        ["Json"] = ["Internals", "Materials", "Formulas", "Planning", "Making", "Analysis", "Reference"],    // Making: the setup of a file states moulds, vessels and cure
    };

    [Fact]
    public void EveryLayer_UsesOnlyTheLayersBelowIt()
    {
        Dictionary<string, string> layerOf = LayerOfEachType();
        Architecture architecture = new ArchLoader().LoadAssemblies(typeof(Formula).Assembly).Build();
        SortedSet<string> faults = new(StringComparer.Ordinal);
        int links = 0;
        foreach (IType type in architecture.Types)
        {
            if (!layerOf.TryGetValue(Outer(type.FullName), out string? from))
                continue;
            foreach (string target in type.Dependencies.Select(d => Outer(d.Target.FullName)).Distinct())
            {
                if (!layerOf.TryGetValue(target, out string? to) || to == from)
                    continue;
                links++;
                if (!s_allowed[from].Contains(to))
                    faults.Add($"{type.FullName} ({from}) uses {target} ({to})");
            }
        }
        Assert.Empty(faults);
        Assert.InRange(links, 100, 100_000);
    }

    [Fact]
    public void EveryFolder_IsALayerOfTheTable()
    {
        string[] folders = [.. Directory.EnumerateDirectories(Repository.Path("src", "Saponify")).Select(d => System.IO.Path.GetFileName(d)!).Where(d => d is not ("bin" or "obj"))];
        Assert.Equal(s_allowed.Keys.Order(StringComparer.Ordinal), folders.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Planning_NeverReckonsWithUnitsNet()
    {
        // quantities are handed out at the edges; arithmetic on them would cost 25 to 100 times as much
        string solver = Repository.Read("src", "Saponify", "Planning", "LyeSolver.cs");
        Assert.DoesNotContain("UnitsNet", solver, StringComparison.Ordinal);
        Assert.DoesNotContain("Mass.From", solver, StringComparison.Ordinal);
    }

    private static Dictionary<string, string> LayerOfEachType()
    {
        Dictionary<string, string> layers = new(StringComparer.Ordinal);
        foreach (string layer in s_allowed.Keys)
        {
            foreach (string file in Directory.EnumerateFiles(Repository.Path("src", "Saponify", layer), "*.cs", SearchOption.AllDirectories))
            {
                foreach (BaseTypeDeclarationSyntax type in CSharpSyntaxTree.ParseText(File.ReadAllText(file)).GetRoot().DescendantNodes().OfType<BaseTypeDeclarationSyntax>().Where(t => t.Parent is BaseNamespaceDeclarationSyntax))
                {
                    string space = ((BaseNamespaceDeclarationSyntax)type.Parent!).Name.ToString();
                    int arity = type is TypeDeclarationSyntax { TypeParameterList.Parameters.Count: > 0 and int n } ? n : 0;
                    layers[$"{space}.{type.Identifier.Text}{(arity > 0 ? $"`{arity}" : "")}"] = layer;
                }
            }
        }
        return layers;
    }

    private static string Outer(string fullName) => fullName.Split('+', '/', '<')[0];
}
