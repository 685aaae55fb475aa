using Saponify.Internals;
using UnitsNet;
using S = Saponify.FormulaShapes;

namespace Saponify;

/// <summary>From pieces of JSON to a formula. Goes on after a fault, so that all of them are reported; then there is no formula.</summary>
internal sealed class FormulaBinder(ShapeReader reader, Pantry pantry)
{
    internal delegate bool Finder<T>(string name, out T? found);

    private string? _data;

    /// <summary>The circumstances in the file; nothing known when it has none.</summary>
    internal BatchSetup Setup { get; private set; } = BatchSetup.Unknown;

    internal Formula? Bind(JsonPiece root)
    {
        if (reader.Read(root, S.Formula) is not { } file)
            return null;
        if (file.Text(S.FormatMember) is { } format && format != S.Format)
            file.Report(ProblemIds.WrongFormat, S.FormatMember, $"the format is \"{ShapeReader.Short(format)}\"", $"this version of the library reads \"{S.Format}\"");
        _ = file.Text(S.WrittenBy);
        _data = file.Text(S.Data);
        if (_data is not null && _data != pantry.Version)
        {
            file.Notice(ProblemIds.OtherTables, S.Data, $"the file rests on the tables \"{ShapeReader.Short(_data)}\", the pantry has {pantry.Version}",
                "each saponification value that differs is named, and the lower one is used");
        }
        string? name = file.Text(S.Name);
        List<FatPortion> fats = Lines(file, S.Fats, Fat);
        AlkaliPlan? alkali = file.Object(S.AlkaliMember) is { } plan ? new AlkaliBinder(reader).Bind(plan) : null;
        LiquidPlan? liquids = file.Object(S.LiquidsMember) is { } liquid ? Liquids(liquid) : null;
        List<AdditivePortion> additives = Lines(file, S.Additives, Additive);
        if (file.Object(S.Setup) is { } setup)
            Setup = new SetupBinder(reader, pantry).Bind(setup);
        List<Suppression> suppressions = [.. file.List(S.Suppressions).OfType<BoundObject>().Select(SuppressionBinder.Bind).OfType<Suppression>()];
        return reader.Problems.Count > 0 || name is null || alkali is null || liquids is null
            ? null
            : new Formula(name) { Fats = fats.ToValueList(), Alkali = alkali, Liquids = liquids, Additives = additives.ToValueList(), Suppressions = suppressions.ToValueList() };
    }

    /// <summary>The lines of a list, as far as they can be made.</summary>
    private static List<T> Lines<T>(BoundObject owner, Member list, Func<BoundObject, T?> make) where T : class, ILine<T>
    {
        List<BoundObject?> items = owner.List(list);
        List<T> lines = new(items.Count);
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (BoundObject? item in items)
        {
            if (item is not null && Named(item, make(item), ids) is { } line)
                lines.Add(line);
        }
        return lines;
    }

    /// <summary>
    /// A line with the id that is written, or its material's. An id that is written and stands already is a fault; a material that
    /// stands twice without ids is not: the formula then numbers its lines.
    /// </summary>
    internal static T? Named<T>(BoundObject item, T? line, HashSet<string> ids) where T : class, ILine<T>
    {
        if (item.Text(S.Line) is { } id)
        {
            if (!ids.Add(id))
                item.Report(ProblemIds.WrongLine, S.Line, $"the id \"{ShapeReader.Short(id)}\" stands twice in this list", "give each line an id of its own");
            return line?.WithLine(id);
        }
        if (line is not null)
            ids.Add(line.Line);
        return line;
    }

    private FatPortion? Fat(BoundObject line)
    {
        Fat? fat = Material<Fat>(line, S.FatId, pantry.TryGetFat, pantry.NearestFats);
        Lot? lot = line.Object(S.FatLot) is { } bound ? Lot(bound) : null;
        SaponificationValue? written = line.Saponification(S.FatSaponification);
        string? stage = line.Choice(S.FatStage);
        if (fat is not null && lot is not null)
            fat = fat.WithLot(lot);
        if (fat is not null && written is { } value && (lot is not null || !line.IsMeant(S.FatLot)))
            fat = Lower(line, fat, value);
        FatPortion? portion = Portion(line, fat, static (f, m) => f.Weighing(m), static (f, v) => f.Pouring(v), static f => f.Figures.Density is not null);
        return stage == "trace" ? portion?.AtTrace() : portion;
    }

    private static Lot? Lot(BoundObject line)
    {
        (string? name, string? source, SaponificationValue? value, DateOnly? date) = (line.Text(S.LotName), line.Text(S.LotSource), line.Saponification(S.LotSaponification), line.Date(S.LotDate));
        return name is null || source is null ? null : new() { Name = name, Source = source, Saponification = value, Date = date };
    }

    /// <summary>The file states another saponification value than the tables give now: both are reported and the lower one is taken.</summary>
    private Fat Lower(BoundObject line, Fat fat, SaponificationValue written)
    {
        if (fat.Saponification is { } now && now.Value == written)
            return fat;
        string from = _data is null ? "the file" : $"the file (tables {ShapeReader.Short(_data)})";
        string today = fat.Lot?.Saponification is not null ? "its lot" : $"the pantry (tables {pantry.Version})";
        bool lower = fat.Saponification is null || written < fat.Saponification.Value;
        line.Notice(ProblemIds.DataDiffers, S.FatSaponification,
            $"{fat.Name}: {from} has {written}, {today} has {fat.Saponification?.Value.ToString() ?? "no value fit for lye"}",
            lower ? "the file's value is used, which means less lye" : "the pantry's value is used, which means less lye");
        return lower
            ? fat.WithLot(new() { Name = fat.Lot?.Name ?? "as in the file", Source = fat.Lot?.Source ?? $"formula file{(_data is null ? "" : ", tables " + _data)}", Saponification = written, Date = fat.Lot?.Date })
            : fat;
    }

    private LiquidPlan? Liquids(BoundObject plan)
    {
        LiquidPlan? rule = Rule(plan);
        Member? first = Array.Find(S.Liquids.OneOf[0].Members, plan.Has);
        bool isMeant = Array.Exists(S.Liquids.OneOf[0].Members, plan.IsMeant);
        BoundObject? lye = plan.Object(S.LyeLiquid);
        List<LiquidPortion> held = Lines(plan, S.HeldBack, WeighedLiquid);
        if (lye is null && plan.IsMeant(S.LyeLiquid))
            return null;                                      // it may be the weighed one: nothing can be said of a missing rule
        if (lye is null || !(lye.IsMeant(S.Mass) || lye.IsMeant(S.Volume)))
        {
            if (!isMeant)
            {
                plan.Missing(S.LyeConcentration, "nothing says how much liquid",
                    "write one of lyeConcentration, waterToAlkali, waterToFats, totalWater, or the mass of the lyeLiquid");
            }
            else if (lye is not null && lye.Has(S.Line))
                lye.Report(ProblemIds.Conflict, S.Line, "an id names a line, and a lye liquid that is not weighed is none", "leave it out");
            return (lye is null ? rule : Dissolving(rule, lye))?.HoldingBack([.. held]);
        }
        if (first is not null)
            lye.Report(ProblemIds.Conflict, lye.Has(S.Mass) ? S.Mass : S.Volume, $"the lye liquid is weighed and \"{first.Name}\" is given as well", "keep one of them");
        LiquidPortion? portion = WeighedLiquid(lye);
        if (lye.Text(S.Line) is { } id && portion is not null)
            portion = portion with { Line = id };
        return portion is null ? null : LiquidPlan.WeighedLyeLiquid(portion).HoldingBack([.. held]);
    }

    private static LiquidPlan? Rule(BoundObject plan)
    {
        LiquidPlan? made = null;
        if (plan.Percent(S.LyeConcentration) is { } concentration)
            made = LiquidPlan.LyeConcentration(concentration);
        if (plan.Parts(S.WaterToAlkali) is { } parts)
            made = LiquidPlan.WaterToAlkali(parts);
        if (plan.Percent(S.WaterToFats) is { } share)
            made = LiquidPlan.WaterToFats(share);
        if (plan.Mass(S.TotalWater) is { } total)
            made = LiquidPlan.TotalWater(total);
        return made;
    }

    private LiquidPlan? Dissolving(LiquidPlan? rule, BoundObject lye)
    {
        Liquid? liquid = OneLiquid(lye);
        LiquidPortion? form = WithForm(lye, liquid?.Weighing(Mass.Zero));
        return form is null ? null
            : form.IsFrozen ? rule?.DissolvingInFrozen(form.Liquid, form.Temperature!.Value)
            : form.Temperature is { } temperature ? rule?.DissolvingIn(form.Liquid, temperature)
            : rule?.DissolvingIn(form.Liquid);
    }

    private LiquidPortion? WeighedLiquid(BoundObject line) =>
        WithForm(line, Portion(line, OneLiquid(line), static (l, m) => l.Weighing(m), static (l, v) => l.Pouring(v), static l => l.Density is not null));

    private Liquid? OneLiquid(BoundObject line)
    {
        Liquid? liquid = Material<Liquid>(line, S.LiquidId, pantry.TryGetLiquid, pantry.NearestLiquids);
        return line.Object(S.LiquidLabel) is { } label ? Labelled(label, liquid) : liquid;
    }

    /// <summary>A liquid with the composition of its label. What the label leaves out is the table's; water left out makes room for what the label has more.</summary>
    private Liquid? Labelled(BoundObject label, Liquid? liquid)
    {
        int before = reader.Problems.Count;
        string? source = label.Text(S.LabelSource);
        Contents table = liquid?.Contents ?? Contents.None;
        double more = 0;
        Ratio Part(Member member, Ratio usual)
        {
            Ratio part = label.Percent(member) ?? usual;
            more += part.DecimalFractions - usual.DecimalFractions;
            return part;
        }
        Contents stated = table with
        {
            Fat = Part(S.LabelFat, table.Fat),
            Sugar = Part(S.LabelSugar, table.Sugar),
            Protein = Part(S.LabelProtein, table.Protein),
            Acid = Part(S.LabelAcid, table.Acid),
            Alcohol = Part(S.LabelAlcohol, table.Alcohol),
            Ash = Part(S.LabelAsh, table.Ash),
        };
        double left = Math.Clamp(table.Water.DecimalFractions - more, 0, 1);
        stated = stated with { Water = label.Percent(S.LabelWater) ?? Ratio.FromDecimalFractions(left) };
        if (source is null || liquid is null || reader.Problems.Count > before)
            return null;
        if (stated.Total <= Contents.MostInAll)
            return liquid.WithLabel(source, stated);
        reader.Report(ProblemIds.SharesOff, label.Piece, $"the parts of {liquid.Name} add up to {Text.Number(stated.Total * 100)} %", "more than 100 % can't be in it; parts that are left out are the table's");
        return null;
    }

    /// <summary>Temperature and form of a liquid.</summary>
    private static LiquidPortion? WithForm(BoundObject line, LiquidPortion? portion)
    {
        Temperature? temperature = line.Temperature(S.Temperature);
        bool? flag = line.Flag(S.Frozen);
        if (flag is null && line.IsMeant(S.Frozen))
            return null;                                      // the range of its temperature depends on it
        bool frozen = flag ?? false;
        if (frozen && !line.IsMeant(S.Temperature))
            line.Missing(S.Temperature, "a frozen liquid needs its temperature", "write for example \"-18 °C\"");
        if (temperature is not { } at)
            return frozen || line.IsMeant(S.Temperature) ? null : portion;
        double celsius = at.DegreesCelsius;
        if (frozen && celsius > 0)
            line.Report(ProblemIds.OutOfRange, S.Temperature, "a frozen liquid is not above 0 °C", "write its temperature in the freezer");
        else if (!frozen && celsius < -10)
            line.Report(ProblemIds.OutOfRange, S.Temperature, "a liquid that is not frozen is not below -10 °C", "write \"frozen\": true if it is frozen");
        else
            return frozen ? portion?.FrozenAt(at) : portion?.At(at);
        return null;
    }

    private AdditivePortion? Additive(BoundObject line)
    {
        Additive? additive = Material<Additive>(line, S.AdditiveId, pantry.TryGetAdditive, pantry.NearestAdditives);
        Mass? mass = line.Mass(S.Mass);
        Ratio? share = line.Percent(S.OfFats);
        _ = line.Choice(S.Amount);
        string? stage = line.Choice(S.AdditiveStage);
        if (additive is null)
            return null;
        AdditivePortion portion = mass is { } grams ? additive.Weighing(grams) : share is { } part ? additive.ShareOfFats(part) : additive.AmountUnknown();
        return stage is null ? portion : portion.At(stage switch { "lyeLiquid" => Stage.LyeLiquid, "fats" => Stage.Fats, "trace" => Stage.Trace, _ => Stage.Top });
    }

    private T? Material<T>(BoundObject line, Member member, Finder<T> find, Func<string, ValueList<string>> nearest) where T : class =>
        Material(reader, line, member, find, nearest);

    /// <summary>The material that a member names; one that is not there is reported with the nearest.</summary>
    internal static T? Material<T>(ShapeReader reader, BoundObject line, Member member, Finder<T> find, Func<string, ValueList<string>> nearest) where T : class
    {
        if (line.Text(member) is not { } name)
            return null;
        if (find(name, out T? found))
            return found;
        ValueList<string> near = reader.Suggest(nearest, name);
        line.Report(ProblemIds.UnknownMaterial, member, $"the pantry has no {member.Name} \"{ShapeReader.Short(name)}\"",
            near.Count == 0 ? "look the id up in the table, or add the material by an overlay" : "nearest: " + string.Join(", ", near));
        return null;
    }

    /// <summary>A portion by mass or by volume.</summary>
    private static TPortion? Portion<T, TPortion>(BoundObject line, T? material, Func<T, Mass, TPortion> weigh, Func<T, Volume, TPortion> pour, Func<T, bool> hasDensity)
        where T : class where TPortion : class
    {
        (Mass? mass, Volume? volume) = (line.Mass(S.Mass), line.Volume(S.Volume));
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
