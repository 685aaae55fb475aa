using FluentValidation;
using Saponify.Analysis;
using Saponify.Analysis.Rules;
using Level = FluentValidation.Severity;

namespace Saponify.Benchmarks;

/// <summary>
/// Twelve rules of the library, and the same twelve written for FluentValidation: over the same facts (formula and plan), with the same limits and
/// conditions, each under the id of its rule.
/// </summary>
internal sealed class TwelveChecks : AbstractValidator<FormulaFacts>
{
    internal static readonly FormulaRule[] Rules =
    [
        new CheckTheSizeOfTheBatch(), new WeighRatherThanPour(), new KeepAlkaliWithinDemand(), new GiveEveryFatAUsableValue(), new DontRelyOnUnlistedFat(), new KeepPotashOutOfBars(),
        new AddLateFatsForSure(), new KeepAcidsWithinTheAlkali(), new ListAFat(), new WeighSomeAlkali(), new LeaveWaterForTheLye(), new LimitWaxes(),
    ];

    internal TwelveChecks()
    {
        RuleFor(f => f.ListedGrams).InclusiveBetween(100, 50_000).When(f => f.HasFat && !KeepTheBatchPossible.IsTooLarge(f))
            .WithErrorCode("SFY1106").WithSeverity(Level.Info).WithMessage("the fats come to {PropertyValue} g: is the unit right?");
        RuleForEach(f => f.Formula.Fats).Must(p => p.Poured is null)
            .WithErrorCode("SFY1107").WithSeverity(Level.Info).WithMessage("a fat is poured by volume and converted by the density on file");
        RuleFor(f => f.Balance.OfAllFat).GreaterThanOrEqualTo(0).When(f => f.WhyNoSuperfat is null)
            .WithErrorCode("SFY2001").WithMessage("more alkali than acids and all fat can take up: a superfat of {PropertyValue}");
        RuleForEach(f => f.Formula.Fats).Must(p => p.Fat.Saponification is not null)
            .WithErrorCode("SFY2004").WithMessage("a fat has no saponification value fit for computing lye");
        RuleFor(f => f.Plan).Must(p => !p.IsSafeOnlyByUnlistedFat).When(f => f.WhyNoListedSuperfat is null)
            .WithErrorCode("SFY2005").WithSeverity(Level.Warning).WithMessage("without the fat of liquids and additives the soap is lye-heavy");
        RuleFor(f => (1 - f.Formula.Alkali.Mix.SodiumShare) * 100).LessThanOrEqualTo(12 + 1e-9).When(f => f.Setup.Form == ProductForm.Bar)
            .WithErrorCode("SFY2012").WithSeverity(Level.Warning).WithMessage("{PropertyValue} % of the hydroxide is potassium hydroxide, and a bar is to come out");
        RuleFor(f => f.Balance).Must(b => b is not { BeforeLateFats: < 0, OfAllFat: >= 0 }).When(f => f.Balance.LateHydroxide > 0 && f.WhyNoSuperfat is null)
            .WithErrorCode("SFY2016").WithSeverity(Level.Info).WithMessage("until the late fats go in, the pot is lye-heavy");
        RuleFor(f => f.Balance.AcidHydroxide).LessThanOrEqualTo(f => f.Balance.Hydroxide * (1 + 1e-12))
            .WithErrorCode("SFY2020").WithMessage("acids take up more than the alkali there is");
        RuleFor(f => f.Balance.AllFatHydroxide).GreaterThanOrEqualTo(LyeBalance.LeastDemand).When(f => f.WhyNoDemand is null)
            .WithErrorCode("SFY2021").WithMessage("no fat takes up lye");
        RuleFor(f => f.Balance).Must(b => b.Hydroxide - b.AcidHydroxide > b.AllFatHydroxide * 1e-9 || b.AcidHydroxide > b.Hydroxide * (1 + 1e-12)).When(f => f.WhyNoSuperfat is null)
            .WithErrorCode("SFY2022").WithMessage("no alkali is left for the fats");
        RuleFor(f => f).Must(f => f.Plan.WaterRuleCanBeMet && !(f.Balance.WaterShortGrams > 0)
                && (f.Formula.Alkali.Mix.IsAllSolution || f.Balance.Hydroxide <= 0 || (f.Balance.LyeLiquidGrams > 0 && f.Balance.DissolvingWaterGrams > 0)))
            .WithErrorCode("SFY3001").WithMessage("no liquid is left to dissolve the alkali in");
        RuleFor(f => Blend.Share(f.Formula, fat => fat.Class == FatClass.Wax ? 1 : 0) * 100).LessThanOrEqualTo(8).When(f => f.HasFat)
            .WithErrorCode("SFY4006").WithSeverity(Level.Warning).WithMessage("waxes make up {PropertyValue} % of the fats");
    }
}
