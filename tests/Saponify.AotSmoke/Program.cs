using Saponify;

// usage: Saponify.AotSmoke FILE: reads a formula file, plans it, writes it again, prints the plan
FormulaFile file = FormulaFile.Read(File.ReadAllBytes(args[0]), Pantry.Reference);
if (file.Formula is not { } formula)
{
    Console.Error.WriteLine(string.Join(Environment.NewLine, file.Problems));
    return 2;
}
bool same = formula.Equals(FormulaFile.Read(FormulaFile.Write(formula, Pantry.Reference), Pantry.Reference).Formula);
Console.Write(formula.Plan());
return same ? 0 : 1;
