namespace Saponify;

/// <summary>The table of members of the formula file: what may stand where, in which range. Reader, writer, editor and schema follow it.</summary>
internal static class FormulaShapes
{
    internal const string Format = "saponify-formula/1";

    private const string KeepOne = "keep one of them";
    private const string AlkaliVolume = "the volume of an alkali says too little: how much is in a spoon of flakes or beads depends on how they lie, and of a solution on its strength";

    internal static readonly Member Line = new("line", MemberKind.LineId, "Id of the line, unique in its list; the material's id when left out, with -2, -3 for repeats.");
    internal static readonly Member Mass = new("mass", MemberKind.Mass, "Mass.") { Low = 0, High = 1e9 };
    internal static readonly Member Volume = new("volume", MemberKind.Volume, "Volume in place of the mass; converted by the density on file, and kept as poured.") { Low = 0, High = 1e9 };

    internal static readonly Member LotName = new("name", MemberKind.Text, "Number or name of the lot.") { Required = true };
    internal static readonly Member LotSource = new("source", MemberKind.Text, "Where its figures come from.") { Required = true };
    internal static readonly Member LotSaponification = new("saponificationValue", MemberKind.Saponification, "The lot's own saponification value; it beats the table.") { Low = 0, High = 1000 };
    internal static readonly Member LotDate = new("date", MemberKind.Date, "Date of the certificate.");
    internal static readonly Shape Lot = new("lot", "One delivery of a fat.", [LotName, LotSource, LotSaponification, LotDate]);

    internal static readonly Member FatId = new("fat", MemberKind.Text, "Id or alias of the fat.") { Required = true };
    internal static readonly Member FatStage = new("stage", MemberKind.Choice, "When it goes in: the fat pot when left out, trace for a late fat.") { Choices = ["fats", "trace"] };
    internal static readonly Member FatSaponification = new("saponificationValue", MemberKind.Saponification, "The value that was used when the file was written; if the tables differ now, the lower one is taken.") { Low = 0, High = 1000 };
    internal static readonly Member FatLot = new("lot", MemberKind.Object, "The lot, with figures of its own.") { Shape = Lot };
    internal static readonly Shape Fat = new("fatLine", "One fat.", [Line, FatId, Mass, Volume, FatStage, FatSaponification, FatLot])
    {
        OneOf = [new([Mass, Volume], "keep one of them; the mass is the safer one") { Missing = "nothing says how much", Wanted = "write a mass such as \"420 g\"" }],
        Together = [[Line, FatId], [FatId, FatSaponification, FatLot]],
    };

    internal static readonly Member Superfat = new("superfat", MemberKind.Percent, "Superfat wanted, as a share of the lye demand; left out when the alkali is weighed already.") { Low = -1, High = 1 };
    internal static readonly Member SuperfatOf = new("of", MemberKind.Choice, "Which fat the superfat is counted against; all fat when left out.") { Choices = ["allFat", "listedFats"] };
    internal static readonly Member AlkaliId = new("alkali", MemberKind.Choice, "Which alkali.") { Required = true, Choices = ["sodium-hydroxide", "potassium-hydroxide", "sodium-hydroxide-solution", "potassium-hydroxide-solution"] };
    internal static readonly Member Purity = new("purity", MemberKind.Purity, "Purity of the solid or strength of the solution, by mass; the plan divides by its top.") { Required = true, Low = 1e-6, High = 1 };
    internal static readonly Member Certificate = new("certificate", MemberKind.Text, "Where the purity is stated.");
    internal static readonly Member BoundWater = new("boundWater", MemberKind.Percent, "Water in the alkali as weighed, when it is not simply the rest.") { Low = 0, High = 1 };
    internal static readonly Member ShareOfHydroxide = new("shareOfHydroxide", MemberKind.Percent, "Share of several alkalis, of the hydroxide; all shares add up to 100 %.") { Low = 0, High = 1 };
    internal static readonly Member ShareOfMass = new("shareOfMass", MemberKind.Percent, "Share of several alkalis, of the mass as weighed; all shares add up to 100 %.") { Low = 0, High = 1 };
    internal static readonly Member AlkaliMass = new("mass", MemberKind.Mass, "Mass as weighed already; then no superfat stands in the plan.") { Low = 0, High = 1e9, OfVolume = AlkaliVolume };
    internal static readonly Member AlkaliPoured = new("volume", MemberKind.Volume, "Never: an alkali is weighed.") { Refusal = AlkaliVolume };
    internal static readonly Shape Alkali = new("alkaliLine", "One alkali.", [Line, AlkaliId, Purity, Certificate, BoundWater, ShareOfHydroxide, ShareOfMass, AlkaliMass, AlkaliPoured])
    {
        OneOf = [new([ShareOfHydroxide, ShareOfMass, AlkaliMass], KeepOne)],
        Together = [[Line, AlkaliId], [AlkaliId, Purity, BoundWater]],
    };

    internal static readonly Member Alkalis = new("alkalis", MemberKind.List, "The alkalis, with shares if there are several, or each with its mass when weighed already.") { Required = true, Shape = Alkali };
    internal static readonly Shape AlkaliPlan = new("alkaliPlan", "How the alkali is decided.", [Superfat, SuperfatOf, Alkalis]) { Together = [[Superfat, SuperfatOf]] };

    internal static readonly Member LabelSource = new("source", MemberKind.Text, "Where its figures come from, for example the carton.") { Required = true };
    internal static readonly Member LabelWater = new("water", MemberKind.Percent, "Water; when left out, the table's, less what the other parts have more than there.") { Low = 0, High = 1 };
    internal static readonly Member LabelFat = new("fat", MemberKind.Percent, "Fat, of the kind in the table; the table's share when left out.") { Low = 0, High = 1 };
    internal static readonly Member LabelSugar = new("sugar", MemberKind.Percent, "Sugars; the table's share when left out.") { Low = 0, High = 1 };
    internal static readonly Member LabelProtein = new("protein", MemberKind.Percent, "Protein; the table's share when left out.") { Low = 0, High = 1 };
    internal static readonly Member LabelAcid = new("acid", MemberKind.Percent, "Acid, of the kind in the table; the table's share when left out.") { Low = 0, High = 1 };
    internal static readonly Member LabelAlcohol = new("alcohol", MemberKind.Percent, "Alcohol; the table's share when left out.") { Low = 0, High = 1 };
    internal static readonly Member LabelAsh = new("ash", MemberKind.Percent, "Ash, minerals; the table's share when left out.") { Low = 0, High = 1 };
    internal static readonly Shape Label = new("label", "What the label of this liquid states, by mass.", [LabelSource, LabelWater, LabelFat, LabelSugar, LabelProtein, LabelAcid, LabelAlcohol, LabelAsh])
    {
        Together = [[LabelWater, LabelFat, LabelSugar, LabelProtein, LabelAcid, LabelAlcohol, LabelAsh]],
    };

    internal static readonly Member LiquidId = new("liquid", MemberKind.Text, "Id or alias of the liquid.") { Required = true };
    internal static readonly Member Temperature = new("temperature", MemberKind.Temperature, "How warm it goes in: not below -10 °C, and frozen not above 0 °C.") { Low = -80, High = 100 };
    internal static readonly Member Frozen = new("frozen", MemberKind.Flag, "True when it goes in frozen; then its temperature must be stated.");
    internal static readonly Member LiquidLabel = new("label", MemberKind.Object, "What its label states, in place of the table's composition.") { Shape = Label };
    internal static readonly Shape HeldBackLine = new("liquidLine", "One liquid that is held back.", [Line, LiquidId, Mass, Volume, Temperature, Frozen, LiquidLabel])
    {
        OneOf = Fat.OneOf,
        Together = [[Line, LiquidId], [LiquidId, LiquidLabel]],
    };

    internal static readonly Shape LyeLiquidObject = new("lyeLiquid", "What the alkali is dissolved in; an id of its own only when it is weighed.", HeldBackLine.Members)
    {
        OneOf = [new([Mass, Volume], Fat.OneOf[0].Keep)],
        Together = [[Line, LiquidId, Mass, Volume], [LiquidId, LiquidLabel]],
    };

    internal static readonly Member LyeConcentration = new("lyeConcentration", MemberKind.Percent, "Pure alkali/(pure alkali + all water).") { Low = 0.01, High = 0.95 };
    internal static readonly Member WaterToAlkali = new("waterToAlkali", MemberKind.Parts, "Parts of all water to one part of pure alkali.") { Low = 0.05, High = 100 };
    internal static readonly Member WaterToFats = new("waterToFats", MemberKind.Percent, "All water as a share of the listed fats.") { Low = 0, High = 10 };
    internal static readonly Member TotalWater = new("totalWater", MemberKind.Mass, "All water.") { Low = 0, High = 1e9 };
    internal static readonly Member LyeLiquid = new("lyeLiquid", MemberKind.Object, "What the alkali is dissolved in; plain water when left out. With a mass or volume it is weighed already and no water rule may stand beside it.") { Shape = LyeLiquidObject };
    internal static readonly Member HeldBack = new("heldBack", MemberKind.List, "Liquids that join later.") { Shape = HeldBackLine };
    internal static readonly Shape Liquids = new("liquidPlan", "How much water, what the alkali is dissolved in, what is held back. One water rule, or a weighed lye liquid.",
        [LyeConcentration, WaterToAlkali, WaterToFats, TotalWater, LyeLiquid, HeldBack])
    {
        OneOf = [new([LyeConcentration, WaterToAlkali, WaterToFats, TotalWater], "keep one water rule")],
    };

    internal static readonly Member AdditiveId = new("additive", MemberKind.Text, "Id or alias of the additive.") { Required = true };
    internal static readonly Member OfFats = new("ofFats", MemberKind.Percent, "Share of the mass of the listed fats.") { Low = 0, High = 10 };
    internal static readonly Member Amount = new("amount", MemberKind.Choice, "Says that the amount is not known yet.") { Choices = ["unknown"] };
    internal static readonly Member AdditiveStage = new("stage", MemberKind.Choice, "When it goes in; the additive's usual stage when left out.") { Choices = ["lyeLiquid", "fats", "trace", "top"] };
    internal static readonly Shape Additive = new("additiveLine", "One additive.", [Line, AdditiveId, Mass, OfFats, Amount, AdditiveStage])
    {
        OneOf = [new([Mass, OfFats, Amount], KeepOne) { Missing = "nothing says how much", Wanted = "write a mass, ofFats, or \"amount\": \"unknown\"" }],
        Together = [[Line, AdditiveId], [AdditiveId, AdditiveStage]],
    };

    internal static readonly Member SuppressionRule = new("rule", MemberKind.Text, "Id of the rule.") { Required = true };
    internal static readonly Member SuppressionPath = new("path", MemberKind.Note, "The place by its stable path, such as fats[castor-oil]; the whole formula when left out.");
    internal static readonly Member SuppressionReason = new("reason", MemberKind.Note, "Why it is accepted; without a reason it is reported and not applied.");
    internal static readonly Member SuppressionAuthor = new("author", MemberKind.Note, "Who accepted it.");
    internal static readonly Member SuppressionUntil = new("until", MemberKind.Date, "Last day on which it holds.");
    internal static readonly Shape Suppression = new("suppression", "A finding that is known and accepted.", [SuppressionRule, SuppressionPath, SuppressionReason, SuppressionAuthor, SuppressionUntil]);

    internal static readonly Member FormatMember = new("format", MemberKind.Choice, $"Always {Format}.") { Required = true, Choices = [Format] };
    internal static readonly Member WrittenBy = new("writtenBy", MemberKind.Note, "Program that wrote the file.");
    internal static readonly Member Data = new("data", MemberKind.Note, "Version of the reference tables that the figures come from; another one than the pantry's is reported.");
    internal static readonly Member Name = new("name", MemberKind.Text, "Name of the formula.") { Required = true };
    internal static readonly Member Fats = new("fats", MemberKind.List, "The listed fats.") { Required = true, Shape = Fat };
    internal static readonly Member AlkaliMember = new("alkali", MemberKind.Object, "How the alkali is decided.") { Required = true, Shape = AlkaliPlan };
    internal static readonly Member LiquidsMember = new("liquids", MemberKind.Object, "How the liquid is decided.") { Required = true, Shape = Liquids };
    internal static readonly Member Additives = new("additives", MemberKind.List, "Everything else.") { Shape = Additive };
    internal static readonly Member Suppressions = new("suppressions", MemberKind.List, "Findings that are known and accepted.") { Shape = Suppression };
    internal static readonly Member Setup = new("setup", MemberKind.Object, "Circumstances that are not the formula; the rules that need them speak.") { Shape = SetupShapes.Setup };

    internal static readonly Shape Formula = new("formula", "A soap formula.", [FormatMember, WrittenBy, Data, Name, Fats, AlkaliMember, LiquidsMember, Additives, Setup, Suppressions]);
}
