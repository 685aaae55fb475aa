using System.Text.Json;
using Saponify.Internals;
using UnitsNet;
using S = Saponify.SetupShapes;

namespace Saponify;

/// <summary>From the circumstances of a file to a setup. What is wrong is reported at its place and left out here.</summary>
internal sealed class SetupBinder(ShapeReader reader, Pantry pantry)
{
    internal BatchSetup Bind(BoundObject setup) => new()
    {
        Scale = setup.Object(S.Scale) is { } scale ? Scale(scale) : null,
        AlkaliScale = setup.Object(S.AlkaliScale) is { } alkaliScale ? Scale(alkaliScale) : null,
        Today = setup.Date(S.Today),
        Form = setup.Choice(S.Form) switch { "bar" => ProductForm.Bar, "soft" => ProductForm.Soft, _ => null },
        Excluded = setup.Texts(S.Excluded) ?? default,
        Markets = setup.Texts(S.Markets) ?? default,
        FragranceLimits = [.. setup.List(S.FragranceLimits).OfType<BoundObject>().Select(Limit).OfType<FragranceLimit>()],
        Process = setup.Object(S.Process) is { } process ? Process(process) : null,
        Mould = setup.Object(S.Mould) is { } mould ? Mould(mould) : null,
        Moulds = setup.Count(S.Moulds) ?? BatchSetup.Unknown.Moulds,
        Cut = setup.Object(S.Cut) is { } cut ? Cut(cut) : null,
        Pour = setup.Temperature(S.Pour),
        IsInsulated = setup.Flag(S.Insulated) ?? false,
        LeftInPot = setup.Percent(S.LeftInPot) ?? Ratio.Zero,
        WantedBars = setup.Count(S.WantedBars),
        PouredOn = setup.Date(S.PouredOn),
        SoldFrom = setup.Date(S.SoldFrom),
        Cure = setup.Object(S.Cure) is { } cure ? Cure(cure) : null,
        Ready = setup.Object(S.Ready) is { } ready ? Ready(ready) : null,
        CuredBars = CuredBars(setup),
        DeclaredMass = setup.Mass(S.DeclaredMass),
    };

    private static Scale? Scale(BoundObject scale)
    {
        (Mass? step, Mass? least, Mass? most, Ratio? accuracy, bool? tared) = (scale.Mass(S.ScaleStep), scale.Mass(S.ScaleMinimum), scale.Mass(S.ScaleCapacity), scale.Percent(S.ScaleAccuracy), scale.Flag(S.ScaleTared));
        return step is { } of ? new(of) { MinimumLoad = least, Capacity = most, Accuracy = accuracy, IsTared = tared ?? true } : null;
    }

    /// <summary>A limit by the id of its scent: rules look for that, and a name that none has would be a limit that never speaks.</summary>
    private FragranceLimit? Limit(BoundObject limit)
    {
        Additive? additive = FormulaBinder.Material<Additive>(reader, limit, S.LimitAdditive, pantry.TryGetAdditive, pantry.NearestAdditives);
        (Ratio? share, string? source) = (limit.Percent(S.LimitOfProduct), limit.Text(S.LimitSource));
        return additive is null || share is not { } most || source is null ? null : new(additive.Id, most, source);
    }

    private static ProcessSetup Process(BoundObject process)
    {
        BoundObject? ice = process.Object(S.Ice);
        return new()
        {
            Room = process.Temperature(S.Room),
            Water = process.Temperature(S.Water),
            Alkali = process.Temperature(S.AlkaliTemperature),
            HeldBack = process.Temperature(S.HeldBack),
            Fats = process.Temperature(S.FatPot),
            Lye = process.Temperature(S.Lye),
            Mixed = process.Temperature(S.Mixed),
            MilkLimit = process.Temperature(S.MilkLimit),
            IceShare = ice?.Percent(S.IceShare),
            Ice = ice?.Temperature(S.IceTemperature),
            Vessel = process.Object(S.Vessel) is { } vessel ? Vessel(vessel) : null,
            Surroundings = process.Object(S.Surroundings) is { } surroundings ? Surroundings(surroundings) : null,
            LeastHeadspace = process.Percent(S.LeastHeadspace),
        };
    }

    private static Vessel? Vessel(BoundObject vessel)
    {
        VesselMaterial? material = null;
        if (vessel.Text(S.VesselMaterialId) is { } name && !VesselMaterial.TryFind(name, out material))
        {
            ValueList<string> near = Nearest.To(name, VesselMaterial.All.Select(m => m.Id));
            vessel.Report(ProblemIds.UnknownMaterial, S.VesselMaterialId, $"no vessel is made of \"{ShapeReader.Short(name)}\"",
                near.Count > 0 ? "nearest: " + string.Join(", ", near) : "known: " + string.Join(", ", VesselMaterial.All.Select(m => m.Id)));
        }
        (Volume? volume, Length? diameter, Mass? mass) = (vessel.Volume(S.VesselVolume), vessel.Length(S.VesselDiameter), vessel.Mass(S.VesselMass));
        return material is null || volume is null || diameter is null || mass is null ? null : new(material, volume.Value, diameter.Value, mass.Value);
    }

    private static Surroundings? Surroundings(BoundObject surroundings)
    {
        (string? bath, Temperature? air, BoundObject? own) = (surroundings.Choice(S.Bath), surroundings.Temperature(S.StillAir), surroundings.Object(S.OwnFigures));
        Surroundings? figures = own is null ? null : OwnFigures(own);
        return bath is not null ? Saponify.Surroundings.IceBath() : air is { } room ? Saponify.Surroundings.StillAir(room) : figures;
    }

    private static Surroundings? OwnFigures(BoundObject own)
    {
        (Temperature? temperature, HeatTransferCoefficient? least, HeatTransferCoefficient? most) = (own.Temperature(S.OwnTemperature), own.HeatTransfer(S.OwnLeast), own.HeatTransfer(S.OwnMost));
        if (least is not { } low || most is not { } high)
            return null;
        if (high.WattsPerSquareMeterKelvin < low.WattsPerSquareMeterKelvin)
        {
            own.Report(ProblemIds.OutOfRange, S.OwnMost, "the most heat transfer is less than the least", "write the same figure twice when you know it");
            return null;
        }
        return temperature is { } at ? new(at, low, high) : null;
    }

    private static Mould? Mould(BoundObject mould)
    {
        Mould? made = Block(mould.Object(S.Box), Saponify.Mould.Box);
        made = Block(mould.Object(S.Slab), Saponify.Mould.Slab) ?? made;
        made = Cylinder(mould.Object(S.Cylinder)) ?? made;
        made = Cavities(mould.Object(S.Cavities)) ?? made;
        return mould.Volume(S.MouldVolume) is { } volume ? Saponify.Mould.OfVolume(volume) : made;
    }

    private static Mould? Block(BoundObject? block, Func<Length, Length, Length, Mould> make)
    {
        if (block is null)
            return null;
        (Length? length, Length? width, Length? height) = (block.Length(S.Length), block.Length(S.Width), block.Length(S.Height));
        return Filled(block, length is null || width is null || height is null ? null : make(length.Value, width.Value, height.Value));
    }

    private static Mould? Cylinder(BoundObject? cylinder)
    {
        if (cylinder is null)
            return null;
        (Length? diameter, Length? height) = (cylinder.Length(S.Diameter), cylinder.Length(S.Height));
        return Filled(cylinder, diameter is null || height is null ? null : Saponify.Mould.Cylinder(diameter.Value, height.Value));
    }

    private static Mould? Cavities(BoundObject? cavities)
    {
        if (cavities is null)
            return null;
        (int? count, Volume? each) = (cavities.Count(S.CavityCount), cavities.Volume(S.CavityVolume));
        return count is null || each is null ? null : Saponify.Mould.Cavities(count.Value, each.Value);
    }

    /// <summary>A mould with its lining and fill height. How high it can be filled is known only once size and lining are.</summary>
    private static Mould? Filled(BoundObject place, Mould? mould)
    {
        (Length? lining, Length? height) = (place.Length(S.Lining), place.Length(S.FilledTo));
        if (mould is null || (lining is null && place.IsMeant(S.Lining)))
            return null;
        if (lining is { } thickness)
        {
            if (!mould.Takes(thickness.Centimeters))
            {
                place.Report(ProblemIds.OutOfRange, S.Lining, "a lining of this thickness leaves no space", $"it is thinner than {Text.Number(mould.MostLining)} cm here");
                return null;
            }
            mould = mould.WithLining(thickness);
        }
        if (height is not { } high)
            return mould;
        if (mould.CanBeFilledTo(high.Centimeters))
            return mould.FilledTo(high);
        place.Report(ProblemIds.OutOfRange, S.FilledTo, "the mould can't be filled so high", $"above 0 and at most {Text.Number(mould.MostFill)} cm, the height above the lining");
        return null;
    }

    private static CuttingPlan? Cut(BoundObject cut)
    {
        (Length? thickness, Length? across, Length? kerf, Length? ends, int? samples) = (cut.Length(S.Thickness), cut.Length(S.Across), cut.Length(S.Kerf), cut.Length(S.Ends), cut.Count(S.Samples));
        return thickness is { } slice ? new() { Thickness = slice, Across = across, Kerf = kerf ?? Length.Zero, Ends = ends ?? Length.Zero, Samples = samples ?? 0 } : null;
    }

    private static CureSeries Cure(BoundObject cure)
    {
        (string? bar, Mass? poured, BoundObject? scale) = (cure.Text(S.CureBar), cure.Mass(S.CurePoured), cure.Object(S.CureScale));
        List<BarWeighing> weighings = [];
        foreach (BoundObject item in cure.List(S.Weighings).OfType<BoundObject>())
        {
            (DateOnly? date, Mass? mass) = (item.Date(S.WeighedOn), item.Mass(S.WeighedMass));
            if (date is { } day && mass is { } weighed)
                weighings.Add(new(day, weighed));
        }
        if (cure.At(S.Weighings) is { Kind: JsonTokenType.StartArray, Items.Count: 0 })
            cure.Report(ProblemIds.MissingMember, S.Weighings, "no weighing is listed", "list at least one, or leave \"cure\" out");
        return new(bar ?? CureSeries.Unnamed, [.. weighings]) { Scale = scale is null ? null : Scale(scale), Poured = poured };
    }

    private static ReadyWhen? Ready(BoundObject ready)
    {
        (Ratio? loss, Ratio? near) = (ready.Percent(S.WeeklyLossBelow), ready.Percent(S.WithinOfFinal));
        return loss is { } weekly ? ReadyWhen.WeeklyLossBelow(weekly) : near is { } final ? ReadyWhen.WithinOfFinal(final) : null;
    }

    private static ValueList<Mass> CuredBars(BoundObject setup)
    {
        if (setup.Masses(S.CuredBars) is not { } bars)
            return default;
        if (bars.Count <= NetQuantity.MostBars)
            return bars;
        setup.Report(ProblemIds.TooLarge, S.CuredBars, FormattableString.Invariant($"a sample of {bars.Count} bars is too large"), FormattableString.Invariant($"at most {NetQuantity.MostBars} are read"));
        return default;
    }
}
