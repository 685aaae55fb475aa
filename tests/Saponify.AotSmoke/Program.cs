using Saponify;
using Saponify.Analysis;

// usage: Saponify.AotSmoke FILE: reads the tables and a formula file, plans and checks it, writes it again, prints the plan and the findings
FormulaFile file = FormulaFile.Read(File.ReadAllBytes(args[0]), Pantry.Reference);
if (file.Formula is not { } formula)
{
    Console.Error.WriteLine(string.Join(Environment.NewLine, file.Problems));
    return 2;
}
bool same = formula.Equals(FormulaFile.Read(FormulaFile.Write(formula, Pantry.Reference), Pantry.Reference).Formula);
Console.Write(formula.Plan());
Console.Write(FormulaAnalyzer.Default.Analyze(formula));
return same ? 0 : 1;
