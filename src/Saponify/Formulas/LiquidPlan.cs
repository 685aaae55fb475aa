using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// How much water, what the alkali is dissolved in, and which liquids are held back. All water counts: of the lye liquid, of held-back
/// liquids and additives, of a bought solution and the bound water of flakes; water formed by the reaction does not.
/// The alkali is dissolved in plain water unless <see cref="DissolvingIn(Liquid)"/> says otherwise. Immutable; equality by content.
/// </summary>
public sealed record LiquidPlan
{
    private const string HeldBackLiquids = "The held-back liquids";

    private readonly StoredMass _mass;

    private LiquidPlan(WaterRule rule, double fraction, StoredMass mass)
    {
        Rule = rule;
        Fraction = fraction;
        _mass = mass;
    }

    internal double Fraction { get; }

    internal double Grams => _mass.Grams;

    internal double HeldBackGrams { get; private init; }

    internal double HeldBackWater { get; private init; }

    internal double HeldBackFatHydroxide { get; private init; }

    internal double HeldBackAcidHydroxide { get; private init; }

    /// <summary>How the amount of water is decided.</summary>
    public WaterRule Rule { get; }

    /// <summary>
    /// The figure of the rule: lye concentration, parts of water to alkali (200 % is two parts), or water as a share of the listed fats.
    /// Null for the rules that state a mass.
    /// </summary>
    public Ratio? Share => Rule <= WaterRule.WaterToFats ? Stored.ToRatio(Fraction) : null;

    /// <summary>The mass of the rule: all water, or the lye liquid weighed. Null for the rules that state a share.</summary>
    public Mass? Mass => Rule > WaterRule.WaterToFats ? _mass.Written : null;

    /// <summary>What the alkali is dissolved in.</summary>
    public LyeLiquid LyeLiquid { get; private init; } = LyeLiquid.PlainWater;

    /// <summary>The portion of <see cref="WaterRule.WeighedLyeLiquid"/>; null for the other rules.</summary>
    public LiquidPortion? Weighed { get; private init; }

    /// <summary>Liquids that join later: into the cooled lye, the fats, or at trace.</summary>
    /// <exception cref="ArgumentException">The list holds a null.</exception>
    public ValueList<LiquidPortion> HeldBack
    {
        get;
        init
        {
            field = LineId.MakeUnique(value, HeldBackLiquids);
            (double grams, double water, double fat, double acid) = (0, 0, 0, 0);
            foreach (LiquidPortion portion in field)
            {
                grams += portion.Grams;
                water += portion.Grams * portion.Liquid.WaterPerGram;
                fat += portion.Grams * portion.Liquid.FatHydroxidePerGram;
                acid += portion.Grams * portion.Liquid.AcidHydroxidePerGram;
            }
            (HeldBackGrams, HeldBackWater, HeldBackFatHydroxide, HeldBackAcidHydroxide) = (grams, water, fat, acid);
        }
    }

    /// <summary>Water for a lye of this strength over all water.</summary>
    /// <param name="ofAllWater">Pure alkali/(pure alkali + all water), from 1 to 95 %. Usual for bars: 25 to 40 % (common practice, no source).</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static LiquidPlan LyeConcentration(Ratio ofAllWater) =>
        new(WaterRule.LyeConcentration, Stored.Fraction(ofAllWater, 0.01, 0.95, "A lye concentration"), default);

    /// <summary>Water as parts to one part of pure alkali.</summary>
    /// <param name="parts">g of all water per g of pure alkali, from 0.05 to 100: <c>Ratio.FromDecimalFractions(2.2)</c> is 2.2 parts.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static LiquidPlan WaterToAlkali(Ratio parts) =>
        new(WaterRule.WaterToAlkali, Stored.Fraction(parts, 0.05, 100, "Water to alkali"), default);

    /// <summary>Water as a share of the listed fats.</summary>
    /// <param name="share">g of all water per g of listed fats, from 0 to 1000 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static LiquidPlan WaterToFats(Ratio share) =>
        new(WaterRule.WaterToFats, Stored.Fraction(share, 0, 10, "Water to fats"), default);

    /// <summary>So much water in all.</summary>
    /// <param name="mass">All water, from 0 to 1e9 g.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static LiquidPlan TotalWater(Mass mass) => new(WaterRule.TotalWater, 0, StoredMass.Of(mass, "A mass of water"));

    /// <summary>The liquid that the alkali is dissolved in is weighed already.</summary>
    /// <param name="portion">Liquid, mass, temperature and form.</param>
    /// <exception cref="ArgumentNullException"><paramref name="portion"/> is null.</exception>
    public static LiquidPlan WeighedLyeLiquid(LiquidPortion portion)
    {
        ArgumentNullException.ThrowIfNull(portion);
        return new(WaterRule.WeighedLyeLiquid, 0, StoredMass.Of(portion.Mass, "A mass of lye liquid"))
        {
            LyeLiquid = new(portion.Liquid, portion.StoredTemperature, portion.IsFrozen),
            Weighed = portion,
        };
    }

    /// <summary>The alkali is dissolved in this liquid. Plain water is the safer choice: see the cautions on milk.</summary>
    /// <param name="liquid">The liquid.</param>
    /// <exception cref="ArgumentNullException"><paramref name="liquid"/> is null.</exception>
    public LiquidPlan DissolvingIn(Liquid liquid) => In(new(liquid, null, false));

    /// <summary>The alkali is dissolved in this liquid at a temperature.</summary>
    /// <param name="liquid">The liquid.</param>
    /// <param name="temperature">From -10 to 100 degrees Celsius.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside that range, or not a number.</exception>
    public LiquidPlan DissolvingIn(Liquid liquid, Temperature temperature) => In(new(liquid, LyeLiquid.LiquidAt(temperature), false));

    /// <summary>The alkali is dissolved in this liquid, frozen: cubes or slush, a little alkali at a time.</summary>
    /// <param name="liquid">The liquid.</param>
    /// <param name="temperature">From -80 to 0 degrees Celsius.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside that range, or not a number.</exception>
    public LiquidPlan DissolvingInFrozen(Liquid liquid, Temperature temperature) => In(new(liquid, LyeLiquid.FrozenAt(temperature), true));

    /// <summary>These liquids are held back and join later.</summary>
    /// <param name="portions">The portions; they replace earlier ones.</param>
    public LiquidPlan HoldingBack(params LiquidPortion[] portions) =>
        this with { HeldBack = LineId.NoNull(ValueList.Create<LiquidPortion>(portions ?? throw new ArgumentNullException(nameof(portions))), HeldBackLiquids, nameof(portions)) };

    /// <summary>This plan with the water rule of another one; lye liquid and held-back liquids stay.</summary>
    internal LiquidPlan WithRuleOf(LiquidPlan other) => new LiquidPlan(other.Rule, other.Fraction, other._mass) { LyeLiquid = LyeLiquid, HeldBack = HeldBack };

    internal LiquidPlan Times(double factor)
    {
        var held = new LiquidPortion[HeldBack.Count];
        for (int i = 0; i < held.Length; i++)
            held[i] = HeldBack[i].Times(factor);
        LiquidPlan scaled = Weighed is null
            ? new(Rule, Fraction, Rule == WaterRule.TotalWater ? _mass.Times(factor, "A scaled mass") : default) { LyeLiquid = LyeLiquid }
            : WeighedLyeLiquid(Weighed.Times(factor));
        return scaled with { HeldBack = new(held) };
    }

    private LiquidPlan In(LyeLiquid liquid) => this with
    {
        LyeLiquid = liquid,
        Weighed = Weighed is null ? null : new LiquidPortion(liquid.Liquid, Weighed.Mass).WithTemperature(liquid.StoredTemperature, liquid.IsFrozen),
    };
}
