namespace Saponify;

/// <summary>The table of members of the file of a batch on the bench. Reader, writer and schema follow it.</summary>
internal static class BatchShapes
{
    internal const string Format = "saponify-batch/1";

    internal static readonly Member WeightLine = new("line", MemberKind.Text, "The line by its stable path, such as fats[olive-oil] or liquids.lyeLiquid.") { Required = true };
    internal static readonly Member WeightMass = new("mass", MemberKind.Mass, "What the scale showed.") { Required = true, Low = 0, High = 1e9 };
    internal static readonly Shape Weight = new("weight", "What was weighed for one line.", [WeightLine, WeightMass]);

    internal static readonly Member FormatMember = new("format", MemberKind.Choice, $"Always {Format}.") { Required = true, Choices = [Format] };
    internal static readonly Member WrittenBy = new("writtenBy", MemberKind.Note, "Program that wrote the file.");
    internal static readonly Member Formula = new("formula", MemberKind.Object, "The formula that was planned; may be left out where the formula is at hand otherwise.") { Shape = FormulaShapes.Formula };
    internal static readonly Member Bench = new("bench", MemberKind.Object, "The same with every mass worked out when weighing began, and with what was added or found out since; worked out anew when left out.") { Shape = FormulaShapes.Formula };
    internal static readonly Member State = new("state", MemberKind.Choice, "How far the batch is: weighing when left out, mixed once the alkali is in, poured.") { Choices = ["weighing", "mixed", "poured"] };
    internal static readonly Member Weights = new("weights", MemberKind.List, "What was weighed, in the order of weighing.") { Shape = Weight };

    internal static readonly Shape Batch = new("batch", "A batch on the bench.", [FormatMember, WrittenBy, Formula, Bench, State, Weights]);
}
