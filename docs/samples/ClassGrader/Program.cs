using System.Globalization;
using ClassGrader;
using Saponify;

string folder = AppContext.BaseDirectory;
FormulaFile file = FormulaFile.Read(File.ReadAllBytes(Path.Combine(folder, "exercise.json")), Pantry.Reference);
if (file.Formula is null)
{
    foreach (Problem problem in file.Problems)
        Console.Error.WriteLine("exercise.json" + problem);
    return 2;
}

Grader grader = new(file.Formula);
Console.WriteLine(FormattableString.Invariant($"{file.Formula.Name}: {grader.RightGrams:0.0} g"));
foreach (string[] answer in File.ReadLines(Path.Combine(folder, "answers.csv")).Skip(1).Select(line => line.Split(',')))
    Console.WriteLine(grader.Mark("group " + answer[0], double.Parse(answer[1], CultureInfo.InvariantCulture)));
return 0;
