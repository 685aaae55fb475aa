using Saponify.Internals;
using UnitsNet;
using S = Saponify.FormulaShapes;

namespace Saponify;

/// <summary>From pieces of JSON to a formula. Goes on after a fault, so that all of them are reported; then there is no formula.</summary>
internal sealed class FormulaBinder(ShapeReader reader, Pantry pantry)
{
    private delegate bool Finder<T>(string name, out T? found);

    internal Formula? Bind(JsonPiece root)
    {
        if (reader.Read(root, S.Formula, FilePointer.Root) is not { } file)
            return null;
        if (file.Text(S.FormatMember) is { } format && format != S.Format)
            file.Report(ProblemIds.WrongFormat, S.FormatMember, $"the format is \"{ShapeReader.Short(format)}\"", $"this version of the library reads \"{S.Format}\"");
        _ = file.Text(S.WrittenBy);
        string? data = file.Text(S.Data);
        string? name = file.Text(S.Name);
        List<FatPortion> fats = Lines(file, S.Fats, line => Fat(line, data), f => f.Line);
        AlkaliPlan? alkali = file.Object(S.AlkaliMember) is { } plan ? Alkali(plan) : null;
        LiquidPlan? liquids = file.Object(S.LiquidsMember) is { } liquid ? Liquids(liquid) : null;
        List<AdditivePortion> additives = Lines(file, S.Additives, Additive, a => a.Line);
        List<Suppression> suppressions = [.. file.List(S.Suppressions).OfType<BoundObject>().Select(SuppressionBinder.Bind).OfType<Suppression>()];
        return reader.Problems.Count > 0 || name is null || alkali is null || liquids is null
            ? null
            : new Formula(name) { Fats = fats.ToValueList(), Alkali = alkali, Liquids = liquids, Additives = additives.ToValueList(), Suppressions = suppressions.ToValueList() };
    }

    /// <summary>The lines of a list; an id that is written twice is a fault, a material that stands twice without one is not.</summary>
    private static List<T> Lines<T>(BoundObject owner, Member list, Func<BoundObject, T?> make, Func<T, string> id) where T : class
    {
        List<T> lines = [];
        HashSet<string> written = new(StringComparer.Ordinal);
        foreach (BoundObject? item in owner.List(list))
        {
            if (item is null || make(item) is not { } line)
                continue;
            if (item.Has(S.Line) && !written.Add(id(line)))
                item.Report(ProblemIds.WrongLine, S.Line, $"the id \"{id(line)}\" stands twice in this list", "give each line an id of its own");
            lines.Add(line);
        }
        return lines;
    }

    private FatPortion? Fat(BoundObject line, string? data)
    {
        Fat? fat = Material<Fat>(line, S.FatId, pantry.TryGetFat, pantry.NearestFats);
        Lot? lot = line.Object(S.FatLot) is { } bound ? Lot(bound) : null;
        SaponificationValue? written = line.Saponification(S.FatSaponification);
        string? stage = line.Choice(S.FatStage);
        if (fat is not null && lot is not null)
            fat = fat.WithLot(lot);
        if (fat is not null && written is { } value)
            fat = Lower(line, fat, value, data);
        FatPortion? portion = Portion(line, fat, (f, m) => f.Weighing(m), (f, v) => f.Pouring(v), f => f.Figures.Density is not null);
        if (portion is null)
            return null;
        if (stage == "trace")
            portion = portion.AtTrace();
        return line.Text(S.Line) is { } id ? portion with { Line = id } : portion;
    }

    private static Lot? Lot(BoundObject line)
    {
        (string? name, string? source, SaponificationValue? value, DateOnly? date) = (line.Text(S.LotName), line.Text(S.LotSource), line.Saponification(S.LotSaponification), line.Date(S.LotDate));
        return name is null || source is null ? null : new() { Name = name, Source = source, Saponification = value, Date = date };
    }

    /// <summary>The file states another saponification value than the tables give now: both are reported and the lower one is taken.</summary>
    private Fat Lower(BoundObject line, Fat fat, SaponificationValue written, string? data)
    {
        if (fat.Saponification is { } now && now.Value == written)
            return fat;
        string from = data is null ? "the file" : $"the file (tables {data})";
        string today = fat.Lot?.Saponification is not null ? "its lot" : $"the pantry (tables {pantry.Version})";
        bool lower = fat.Saponification is null || written < fat.Saponification.Value;
        line.Notice(ProblemIds.DataDiffers, S.FatSaponification,
            $"{fat.Name}: {from} has {written}, {today} has {fat.Saponification?.Value.ToString() ?? "no value fit for lye"}",
            lower ? "the file's value is used, which means less lye" : "the pantry's value is used, which means less lye");
        return lower
            ? fat.WithLot(new() { Name = fat.Lot?.Name ?? "as in the file", Source = fat.Lot?.Source ?? $"formula file{(data is null ? "" : ", tables " + data)}", Saponification = written, Date = fat.Lot?.Date })
            : fat;
    }

    private AlkaliPlan? Alkali(BoundObject plan)
    {
        Ratio? superfat = plan.Percent(S.Superfat);
        string? basis = plan.Choice(S.SuperfatOf);
        List<BoundObject> items = [.. plan.List(S.Alkalis).OfType<BoundObject>()];
        int before = reader.Problems.Count;
        List<Alkali?> alkalis = [.. items.Select(OneAlkali)];
        if (plan.At(S.Alkalis) is { Items.Count: 0 })
            plan.Report(ProblemIds.MissingMember, S.Alkalis, "no alkali is listed", "list at least one");
        AlkaliPlan? result = plan.IsMeant(S.Superfat)
            ? Target(plan, superfat, basis, items, alkalis)
            : Weighed(plan, basis, items, alkalis);
        return reader.Problems.Count == before ? result : null;
    }

    private SuperfatTarget? Target(BoundObject plan, Ratio? superfat, string? basis, List<BoundObject> items, List<Alkali?> alkalis)
    {
        int before = reader.Problems.Count;
        List<AlkaliShare> shares = [];
        HashSet<string> written = new(StringComparer.Ordinal);
        for (int i = 0; i < items.Count; i++)
        {
            BoundObject item = items[i];
            if (item.Has(S.Mass))
                item.Report(ProblemIds.Conflict, S.Mass, "a mass stands beside a superfat", "leave out the superfat if the alkali is weighed already, or the mass if it is to be computed");
            if (item.Has(S.ShareOfHydroxide) && item.Has(S.ShareOfMass))
                item.Report(ProblemIds.Conflict, S.ShareOfMass, "two kinds of share stand side by side", "keep one");
            Ratio? ofHydroxide = item.Percent(S.ShareOfHydroxide), ofMass = item.Percent(S.ShareOfMass);
            if (!item.Has(S.ShareOfHydroxide) && !item.Has(S.ShareOfMass))
            {
                if (items.Count > 1 && !item.IsMeant(S.ShareOfHydroxide) && !item.IsMeant(S.ShareOfMass))
                    item.Report(ProblemIds.MissingMember, S.ShareOfHydroxide, "several alkalis need shares", "write shareOfHydroxide or shareOfMass for each");
                ofHydroxide = Ratio.FromPercent(100);
            }
            if (alkalis[i] is not { } alkali || (ofHydroxide ?? ofMass) is null)
                continue;
            AlkaliShare share = ofHydroxide is { } hydroxide ? alkali.ShareOfHydroxide(hydroxide) : alkali.ShareOfMass(ofMass!.Value);
            if (item.Text(S.Line) is { } id)
            {
                share = share with { Line = id };
                if (!written.Add(id))
                    item.Report(ProblemIds.WrongLine, S.Line, $"the id \"{id}\" stands twice in this list", "give each line an id of its own");
            }
            shares.Add(share);
        }
        if (reader.Problems.Count != before || superfat is not { } target || shares.Count < items.Count || shares.Count == 0)
            return null;
        if (SuperfatTarget.SharesFault(shares.ToValueList()) is { } fault)
        {
            plan.Report(ProblemIds.SharesOff, S.Alkalis, fault.TrimEnd('.'));
            return null;
        }
        SuperfatTarget made = AlkaliPlan.ForSuperfat(target, [.. shares]);
        return basis == "listedFats" ? made.OfListedFats() : made;
    }

    private static WeighedAlkali? Weighed(BoundObject plan, string? basis, List<BoundObject> items, List<Alkali?> alkalis)
    {
        if (basis is not null)
            plan.Report(ProblemIds.Conflict, S.SuperfatOf, "\"of\" stands without a superfat", "write the superfat, or leave \"of\" out");
        List<AlkaliPortion> portions = [];
        HashSet<string> written = new(StringComparer.Ordinal);
        for (int i = 0; i < items.Count; i++)
        {
            BoundObject item = items[i];
            foreach (Member share in (ReadOnlySpan<Member>)[S.ShareOfHydroxide, S.ShareOfMass])
            {
                if (item.Has(share))
                    item.Report(ProblemIds.Conflict, share, "a share stands beside a weighed alkali", "write the superfat, or the mass of each alkali");
            }
            if (!item.IsMeant(S.Mass))
                item.Report(ProblemIds.MissingMember, S.Mass, "neither a superfat nor the mass of this alkali is given", "write the superfat wanted, or what was weighed");
            if (item.Mass(S.Mass) is not { } mass || alkalis[i] is not { } alkali)
                continue;
            AlkaliPortion portion = alkali.Weighing(mass);
            if (item.Text(S.Line) is { } id)
            {
                portion = portion with { Line = id };
                if (!written.Add(id))
                    item.Report(ProblemIds.WrongLine, S.Line, $"the id \"{id}\" stands twice in this list", "give each line an id of its own");
            }
            portions.Add(portion);
        }
        return portions.Count == 0 ? null : AlkaliPlan.Weighed([.. portions]);
    }

    private static Alkali? OneAlkali(BoundObject item)
    {
        (string? id, Purity? purity, Ratio? water) = (item.Choice(S.AlkaliId), item.Purity(S.Purity), item.Percent(S.BoundWater));
        if (id is null || purity is null)
            return null;
        Alkali alkali = id switch
        {
            "sodium-hydroxide" => Saponify.Alkali.SodiumHydroxide(purity),
            "potassium-hydroxide" => Saponify.Alkali.PotassiumHydroxide(purity),
            "sodium-hydroxide-solution" => Saponify.Alkali.SodiumHydroxideSolution(purity),
            _ => Saponify.Alkali.PotassiumHydroxideSolution(purity),
        };
        if (water is not { } bound)
            return alkali;
        if (bound.DecimalFractions > 1 - purity.HighFraction)
        {
            item.Report(ProblemIds.OutOfRange, S.BoundWater, $"{Text.Number(bound.Percent)} % of bound water leaves no room for {purity} of alkali", "water and alkali together make at most 100 %");
            return null;
        }
        return alkali with { BoundWater = bound };
    }

    private LiquidPlan? Liquids(BoundObject plan)
    {
        Member[] rules = [S.LyeConcentration, S.WaterToAlkali, S.WaterToFats, S.TotalWater];
        Member[] given = [.. rules.Where(plan.Has)];
        if (given.Length > 1)
            plan.Report(ProblemIds.Conflict, given[1], $"\"{given[1].Name}\" stands beside \"{given[0].Name}\"", "keep one water rule");

        BoundObject? lye = plan.Object(S.LyeLiquid);
        Liquid? liquid = lye is null ? Liquid.Water : Material<Liquid>(lye, S.LiquidId, pantry.TryGetLiquid, pantry.NearestLiquids);
        bool weighed = lye is not null && (lye.Has(S.Mass) || lye.Has(S.Volume));
        if (weighed && given.Length > 0)
            lye!.Report(ProblemIds.Conflict, lye.Has(S.Mass) ? S.Mass : S.Volume, $"the lye liquid is weighed and \"{given[0].Name}\" is given as well", "keep one of them");
        if (!weighed && !rules.Any(plan.IsMeant))
        {
            plan.Report(ProblemIds.MissingMember, S.LyeConcentration, "nothing says how much liquid",
                "write one of lyeConcentration, waterToAlkali, waterToFats, totalWater, or the mass of the lyeLiquid");
        }

        LiquidPlan? made = weighed
            ? Portion(lye!, liquid, (l, m) => l.Weighing(m), (l, v) => l.Pouring(v), l => l.Density is not null) is { } portion ? LiquidPlan.WeighedLyeLiquid(WithForm(lye!, portion)) : null
            : Rule(plan);
        if (made is not null && lye is not null && liquid is not null && !weighed)
        {
            LiquidPortion form = WithForm(lye, liquid.Weighing(Mass.Zero));
            made = form.IsFrozen ? made.DissolvingInFrozen(liquid, form.Temperature!.Value)
                : form.Temperature is { } temperature ? made.DissolvingIn(liquid, temperature)
                : made.DissolvingIn(liquid);
        }
        List<LiquidPortion> held = Lines(plan, S.HeldBack, HeldBack, h => h.Line);
        return made?.HoldingBack([.. held]);
    }

    private static LiquidPlan? Rule(BoundObject plan)
    {
        LiquidPlan? made = null;
        if (plan.Percent(S.LyeConcentration) is { } concentration)
            made = LiquidPlan.LyeConcentration(concentration);
        if (plan.Parts(S.WaterToAlkali) is { } parts)
            made ??= LiquidPlan.WaterToAlkali(parts);
        if (plan.Percent(S.WaterToFats) is { } share)
            made ??= LiquidPlan.WaterToFats(share);
        if (plan.Mass(S.TotalWater) is { } total)
            made ??= LiquidPlan.TotalWater(total);
        return made;
    }

    private LiquidPortion? HeldBack(BoundObject line)
    {
        Liquid? liquid = Material<Liquid>(line, S.LiquidId, pantry.TryGetLiquid, pantry.NearestLiquids);
        LiquidPortion? portion = Portion(line, liquid, (l, m) => l.Weighing(m), (l, v) => l.Pouring(v), l => l.Density is not null);
        return portion is null ? null : WithForm(line, portion);
    }

    /// <summary>Temperature, form and line id of a liquid.</summary>
    private static LiquidPortion WithForm(BoundObject line, LiquidPortion portion)
    {
        Temperature? temperature = line.Temperature(S.Temperature);
        bool frozen = line.Flag(S.Frozen) ?? false;
        if (frozen && !line.Has(S.Temperature))
            line.Report(ProblemIds.MissingMember, S.Temperature, "a frozen liquid needs its temperature", "write for example \"-18 °C\"");
        if (temperature is { } at)
        {
            double celsius = at.DegreesCelsius;
            if (frozen && celsius > 0)
                line.Report(ProblemIds.OutOfRange, S.Temperature, "a frozen liquid is not above 0 °C", "write its temperature in the freezer");
            else if (!frozen && celsius < -10)
                line.Report(ProblemIds.OutOfRange, S.Temperature, "a liquid that is not frozen is not below -10 °C", "write \"frozen\": true if it is frozen");
            else
                portion = frozen ? portion.FrozenAt(at) : portion.At(at);
        }
        return line.Text(S.Line) is { } id ? portion with { Line = id } : portion;
    }

    private AdditivePortion? Additive(BoundObject line)
    {
        Additive? additive = Material<Additive>(line, S.AdditiveId, pantry.TryGetAdditive, pantry.NearestAdditives);
        Mass? mass = line.Mass(S.Mass);
        Ratio? share = line.Percent(S.OfFats);
        _ = line.Choice(S.Amount);
        string? stage = line.Choice(S.AdditiveStage);
        string? id = line.Text(S.Line);
        Member[] given = [.. new[] { S.Mass, S.OfFats, S.Amount }.Where(line.Has)];
        if (!line.IsMeant(S.Mass) && !line.IsMeant(S.OfFats) && !line.IsMeant(S.Amount))
            line.Report(ProblemIds.MissingMember, S.Mass, "nothing says how much", "write a mass, ofFats, or \"amount\": \"unknown\"");
        if (given.Length > 1)
            line.Report(ProblemIds.Conflict, given[1], $"\"{given[1].Name}\" stands beside \"{given[0].Name}\"", "keep one of them");
        if (additive is null)
            return null;
        AdditivePortion portion = mass is { } grams ? additive.Weighing(grams) : share is { } part ? additive.ShareOfFats(part) : additive.AmountUnknown();
        if (stage is not null)
            portion = portion.At(stage switch { "lyeLiquid" => Stage.LyeLiquid, "fats" => Stage.Fats, "trace" => Stage.Trace, _ => Stage.Top });
        return id is null ? portion : portion with { Line = id };
    }

    private static T? Material<T>(BoundObject line, Member member, Finder<T> find, Func<string, ValueList<string>> nearest) where T : class
    {
        if (line.Text(member) is not { } name)
            return null;
        if (find(name, out T? found))
            return found;
        ValueList<string> near = nearest(name);
        line.Report(ProblemIds.UnknownMaterial, member, $"the pantry has no {member.Name} \"{ShapeReader.Short(name)}\"",
            near.Count == 0 ? "look the id up in the table, or add the material by an overlay" : "nearest: " + string.Join(", ", near));
        return null;
    }

    /// <summary>A portion by mass or by volume; exactly one of them.</summary>
    private static TPortion? Portion<T, TPortion>(BoundObject line, T? material, Func<T, Mass, TPortion> weigh, Func<T, Volume, TPortion> pour, Func<T, bool> hasDensity)
        where T : class where TPortion : class
    {
        (Mass? mass, Volume? volume) = (line.Mass(S.Mass), line.Volume(S.Volume));
        if (!line.IsMeant(S.Mass) && !line.IsMeant(S.Volume))
            line.Report(ProblemIds.MissingMember, S.Mass, "nothing says how much", "write a mass such as \"420 g\"");
        if (line.Has(S.Mass) && line.Has(S.Volume))
            line.Report(ProblemIds.Conflict, S.Volume, "a volume stands beside a mass", "keep one of them; the mass is the safer one");
        if (material is null)
            return null;
        if (mass is { } grams)
            return weigh(material, grams);
        if (volume is not { } poured)
            return null;
        if (!hasDensity(material))
        {
            line.Report(ProblemIds.NoDensity, S.Volume, $"no density of {material} is on file, so a volume can't be converted", "weigh it");
            return null;
        }
        line.Notice(ProblemIds.Converted, S.Volume, $"the volume of {material} was converted to a mass by the density on file", "weigh it to be sure");
        return pour(material, poured);
    }
}
