using Saponify.Internals;

namespace Saponify;

/// <summary>The table of members of the circumstances in a formula file. Ranges are those of the types they make; reader and schema follow it, nothing writes it.</summary>
internal static class SetupShapes
{
    internal static readonly Member ScaleStep = new("step", MemberKind.Mass, "The smallest difference it shows.") { Required = true, Limits = Saponify.Scale.StepLimits };
    internal static readonly Member ScaleMinimum = new("minimumLoad", MemberKind.Mass, "The smallest load it may be used for.") { Low = 0, High = 1e9 };
    internal static readonly Member ScaleCapacity = new("capacity", MemberKind.Mass, "The largest load.") { Low = 0, High = 1e9 };
    internal static readonly Member ScaleAccuracy = new("accuracy", MemberKind.Percent, "Stated relative accuracy; it counts between two scales.") { Low = 0, High = 0.2 };
    internal static readonly Member ScaleTared = new("tared", MemberKind.Flag, "False when two readings are subtracted; true when left out.");
    internal static readonly Shape ScaleShape = new("scale", "A scale.", [ScaleStep, ScaleMinimum, ScaleCapacity, ScaleAccuracy, ScaleTared]);

    internal static readonly Member LimitAdditive = new("additive", MemberKind.Text, "Id or alias of the scent.") { Required = true };
    internal static readonly Member LimitOfProduct = new("ofProduct", MemberKind.Percent, "Highest share of the finished soap.") { Required = true, Limits = FragranceLimit.ShareLimits };
    internal static readonly Member LimitSource = new("source", MemberKind.Text, "Where that stands, for example the certificate of a lot.") { Required = true };
    internal static readonly Shape Limit = new("fragranceLimit", "What a certificate allows of a scent.", [LimitAdditive, LimitOfProduct, LimitSource]);

    internal static readonly Member VesselMaterialId = new("material", MemberKind.Text, "What it is made of, such as polypropylene or stainless-steel.") { Required = true };
    internal static readonly Member VesselVolume = new("volume", MemberKind.Volume, "Volume to the brim.") { Required = true, Limits = Saponify.Vessel.VolumeLimits };
    internal static readonly Member VesselDiameter = new("diameter", MemberKind.Length, "Inner diameter.") { Required = true, Limits = Saponify.Vessel.DiameterLimits };
    internal static readonly Member VesselMass = new("mass", MemberKind.Mass, "Its own mass, empty.") { Required = true, Limits = Saponify.Vessel.MassLimits };
    internal static readonly Shape VesselShape = new("vessel", "A jug, pot or beaker.", [VesselMaterialId, VesselVolume, VesselDiameter, VesselMass]);

    internal static readonly Member IceShare = new("share", MemberKind.Percent, "Share of the lye liquid that goes in as ice.") { Limits = ProcessSetup.IceShareLimits };
    internal static readonly Member IceTemperature = new("temperature", MemberKind.Temperature, "How cold that ice is.") { Limits = ProcessSetup.IceLimits };
    internal static readonly Shape IceShape = new("ice", "Ice in the lye liquid.", [IceShare, IceTemperature]);

    internal static readonly Member OwnTemperature = new("temperature", MemberKind.Temperature, "How warm they are.") { Required = true, Limits = Saponify.Surroundings.TemperatureLimits };
    internal static readonly Member OwnLeast = new("leastTransfer", MemberKind.HeatTransfer, "The least that the heat transfer may be.") { Required = true, Limits = Saponify.Surroundings.TransferLimits };
    internal static readonly Member OwnMost = new("mostTransfer", MemberKind.HeatTransfer, "The most that it may be, not below the least.") { Required = true, Limits = Saponify.Surroundings.TransferLimits };
    internal static readonly Shape OwnFiguresShape = new("ownSurroundings", "Surroundings by figures of your own.", [OwnTemperature, OwnLeast, OwnMost]);

    internal static readonly Member Bath = new("bath", MemberKind.Choice, "A bath of water with ice floating in it.") { Choices = ["ice"] };
    internal static readonly Member StillAir = new("stillAir", MemberKind.Temperature, "Still air of this temperature, when it is not the room's.") { Limits = Saponify.Surroundings.TemperatureLimits };
    internal static readonly Member OwnFigures = new("ownFigures", MemberKind.Object, "Anything else, by your own figures.") { Shape = OwnFiguresShape };
    internal static readonly Shape SurroundingsShape = new("surroundings", "What the lye cools in.", [Bath, StillAir, OwnFigures])
    {
        OneOf = [new([Bath, StillAir, OwnFigures], "keep one of them") { Missing = "nothing says what the lye cools in", Wanted = "write \"bath\": \"ice\", stillAir, or ownFigures" }],
    };

    internal static readonly Member Room = new("room", MemberKind.Temperature, "The room.") { Limits = ProcessSetup.RoomLimits };
    internal static readonly Member Water = new("water", MemberKind.Temperature, "The liquid the alkali is dissolved in, where the formula does not state it.") { Limits = ProcessSetup.WaterLimits };
    internal static readonly Member AlkaliTemperature = new("alkali", MemberKind.Temperature, "The alkali; as warm as the room when left out.") { Limits = ProcessSetup.AlkaliLimits };
    internal static readonly Member HeldBack = new("heldBack", MemberKind.Temperature, "The held-back liquids, where the formula does not state it.") { Limits = ProcessSetup.HeldBackLimits };
    internal static readonly Member FatPot = new("fats", MemberKind.Temperature, "The fat pot when the lye comes in.") { Limits = ProcessSetup.FatsLimits };
    internal static readonly Member Lye = new("lye", MemberKind.Temperature, "What the lye is cooled to before anything joins it.") { Limits = ProcessSetup.LyeLimits };
    internal static readonly Member Mixed = new("mixed", MemberKind.Temperature, "The temperature wanted when all is in the pot; without lye it decides what the lye is cooled to.") { Limits = ProcessSetup.MixedLimits };
    internal static readonly Member MilkLimit = new("milkLimit", MemberKind.Temperature, "What lye with milk or sugar shall not pass.") { Limits = ProcessSetup.MilkLimitLimits };
    internal static readonly Member Ice = new("ice", MemberKind.Object, "Ice in the lye liquid.") { Shape = IceShape };
    internal static readonly Member Vessel = new("vessel", MemberKind.Object, "What the lye is made in.") { Shape = VesselShape };
    internal static readonly Member Surroundings = new("surroundings", MemberKind.Object, "What the lye cools in; still air of the room when left out.") { Shape = SurroundingsShape };
    internal static readonly Member LeastHeadspace = new("leastHeadspace", MemberKind.Percent, "Share of the vessel that shall stay free.") { Limits = ProcessSetup.HeadspaceLimits };
    internal static readonly Shape ProcessShape = new("process", "How warm things are and what the lye is made in. What is left out has no default.",
        [Room, Water, AlkaliTemperature, HeldBack, FatPot, Lye, Mixed, MilkLimit, Ice, Vessel, Surroundings, LeastHeadspace]);

    internal static readonly Member Length = new("length", MemberKind.Length, "Inner length; the cuts go across it.") { Required = true, Limits = Saponify.Mould.SizeLimits };
    internal static readonly Member Width = new("width", MemberKind.Length, "Inner width.") { Required = true, Limits = Saponify.Mould.SizeLimits };
    internal static readonly Member Height = new("height", MemberKind.Length, "Inner height.") { Required = true, Limits = Saponify.Mould.SizeLimits };
    internal static readonly Member Diameter = new("diameter", MemberKind.Length, "Inner diameter.") { Required = true, Limits = Saponify.Mould.SizeLimits };
    internal static readonly Member Lining = new("lining", MemberKind.Length, "Thickness of the lining on base and walls, so thin that a space is left.") { Low = 0, High = Saponify.Mould.SizeLimits.High };
    internal static readonly Member FilledTo = new("filledTo", MemberKind.Length, "How high it is filled above the lining; to the brim when left out.") { Low = 0, High = Saponify.Mould.SizeLimits.High };
    internal static readonly Shape BlockShape = new("block", "A mould with four walls.", [Length, Width, Height, Lining, FilledTo]);
    internal static readonly Shape CylinderShape = new("cylinder", "A standing tube.", [Diameter, Height, Lining, FilledTo]);

    internal static readonly Member CavityCount = new("count", MemberKind.Count, "How many.") { Required = true, Limits = Saponify.Mould.CavityLimits };
    internal static readonly Member CavityVolume = new("each", MemberKind.Volume, "What one holds.") { Required = true, Limits = Saponify.Mould.VolumeLimits };
    internal static readonly Shape CavitiesShape = new("cavities", "Equal cavities, each of them a bar.", [CavityCount, CavityVolume]);

    internal static readonly Member Box = new("box", MemberKind.Object, "A box, such as a loaf mould, that is cut into slices.") { Shape = BlockShape };
    internal static readonly Member Slab = new("slab", MemberKind.Object, "A flat box that is cut both ways.") { Shape = BlockShape };
    internal static readonly Member Cylinder = new("cylinder", MemberKind.Object, "A standing tube that is cut into discs.") { Shape = CylinderShape };
    internal static readonly Member Cavities = new("cavities", MemberKind.Object, "Equal cavities.") { Shape = CavitiesShape };
    internal static readonly Member MouldVolume = new("volume", MemberKind.Volume, "Any other mould, by what it holds.") { Limits = Saponify.Mould.VolumeLimits };
    internal static readonly Shape MouldShape = new("mould", "One mould.", [Box, Slab, Cylinder, Cavities, MouldVolume])
    {
        OneOf = [new([Box, Slab, Cylinder, Cavities, MouldVolume], "keep one mould") { Missing = "nothing says what mould it is", Wanted = "write one of box, slab, cylinder, cavities, volume" }],
    };

    internal static readonly Member Thickness = new("thickness", MemberKind.Length, "Thickness of a slice.") { Required = true, Limits = Saponify.Mould.SizeLimits };
    internal static readonly Member Across = new("across", MemberKind.Length, "Size of a bar across the width, when each slice is cut again.") { Limits = Saponify.Mould.SizeLimits };
    internal static readonly Member Kerf = new("kerf", MemberKind.Length, "What one cut takes away; nothing when left out.") { Limits = CuttingPlan.KerfLimits };
    internal static readonly Member Ends = new("ends", MemberKind.Length, "What is trimmed off each end; nothing when left out.") { Limits = CuttingPlan.EndsLimits };
    internal static readonly Member Samples = new("samples", MemberKind.Count, "Bars of each block that are kept back; none when left out.") { Limits = CuttingPlan.SampleLimits };
    internal static readonly Shape CutShape = new("cut", "How the block is cut into bars.", [Thickness, Across, Kerf, Ends, Samples]);

    internal static readonly Member WeighedOn = new("date", MemberKind.Date, "The day.") { Required = true };
    internal static readonly Member WeighedMass = new("mass", MemberKind.Mass, "What the bar weighed.") { Required = true, Limits = Stored.BarLimits };
    internal static readonly Shape Weighing = new("weighing", "What a curing bar weighed on a day.", [WeighedOn, WeighedMass]);
    internal static readonly Member CureBar = new("bar", MemberKind.Text, "Name or number of the bar.");
    internal static readonly Member CurePoured = new("poured", MemberKind.Mass, "What it weighed as poured.") { Limits = Stored.BarLimits };
    internal static readonly Member CureScale = new("scale", MemberKind.Object, "The scale that it is weighed on.") { Shape = ScaleShape };
    internal static readonly Member Weighings = new("weighings", MemberKind.List, "Its weighings, in the order of time.") { Required = true, Shape = Weighing };
    internal static readonly Shape CureShape = new("cure", "The weighings of one bar while it cures.", [CureBar, CurePoured, CureScale, Weighings]);

    internal static readonly Member WeeklyLossBelow = new("weeklyLossBelow", MemberKind.Percent, "When it loses less than this share in seven days.") { Limits = ReadyWhen.ShareLimits };
    internal static readonly Member WithinOfFinal = new("withinOfFinal", MemberKind.Percent, "When it is heavier than its final mass by no more than this share.") { Limits = ReadyWhen.ShareLimits };
    internal static readonly Shape ReadyShape = new("ready", "When a bar counts as ready.", [WeeklyLossBelow, WithinOfFinal])
    {
        OneOf = [new([WeeklyLossBelow, WithinOfFinal], "keep one of them") { Missing = "nothing says when a bar is ready", Wanted = "write weeklyLossBelow or withinOfFinal" }],
    };

    internal static readonly Member Scale = new("scale", MemberKind.Object, "The scale that is weighed on.") { Shape = ScaleShape };
    internal static readonly Member AlkaliScale = new("alkaliScale", MemberKind.Object, "The scale for the alkali, when it is another one.") { Shape = ScaleShape };
    internal static readonly Member Today = new("today", MemberKind.Date, "The day on which the formula is looked at, for what expires.");
    internal static readonly Member Form = new("form", MemberKind.Choice, "What is to come out.") { Choices = ["bar", "soft"] };
    internal static readonly Member Excluded = new("excluded", MemberKind.Texts, "What the customer or the label excludes: animal, milk, tree-nut ... or ids of materials.");
    internal static readonly Member Markets = new("markets", MemberKind.Texts, "Market areas, such as EU.");
    internal static readonly Member FragranceLimits = new("fragranceLimits", MemberKind.List, "What the certificates of the scents allow.") { Shape = Limit };
    internal static readonly Member Process = new("process", MemberKind.Object, "How warm things are and what the lye is made in.") { Shape = ProcessShape };
    internal static readonly Member Mould = new("mould", MemberKind.Object, "The mould.") { Shape = MouldShape };
    internal static readonly Member Moulds = new("moulds", MemberKind.Count, "How many such moulds there are; 1 when left out.") { Limits = BatchSetup.MouldLimits };
    internal static readonly Member Cut = new("cut", MemberKind.Object, "How the block is cut.") { Shape = CutShape };
    internal static readonly Member Pour = new("pour", MemberKind.Temperature, "The batter at the pour.") { Limits = MouldHeat.PourLimits };
    internal static readonly Member Insulated = new("insulated", MemberKind.Flag, "True when the mould is wrapped or stands warm.");
    internal static readonly Member LeftInPot = new("leftInPot", MemberKind.Percent, "Share of the batch that stays in pot and bowls; nothing when left out.") { Limits = BarOrder.LeftInPotLimits };
    internal static readonly Member WantedBars = new("wantedBars", MemberKind.Count, "Bars wanted for sale.") { Limits = BarOrder.BarsLimits };
    internal static readonly Member PouredOn = new("pouredOn", MemberKind.Date, "The day of the pour.");
    internal static readonly Member SoldFrom = new("soldFrom", MemberKind.Date, "The first day of sale or use.");
    internal static readonly Member Cure = new("cure", MemberKind.Object, "Weighings of a curing bar.") { Shape = CureShape };
    internal static readonly Member Ready = new("ready", MemberKind.Object, "When a bar counts as ready; there is no default.") { Shape = ReadyShape };
    internal static readonly Member CuredBars = new("curedBars", MemberKind.Masses, "What single cured bars weigh.") { Limits = Stored.BarLimits };
    internal static readonly Member DeclaredMass = new("declaredMass", MemberKind.Mass, "The mass that the label declares for one bar.") { Limits = Stored.BarLimits };

    internal static readonly Shape Setup = new("setup", "Circumstances of the batch. What is left out is not known, and the rules that need it do not apply.",
        [Scale, AlkaliScale, Today, Form, Excluded, Markets, FragranceLimits, Process, Mould, Moulds, Cut, Pour, Insulated, LeftInPot, WantedBars, PouredOn, SoldFrom, Cure, Ready, CuredBars, DeclaredMass]);
}
