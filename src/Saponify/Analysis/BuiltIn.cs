using Saponify.Analysis.Rules;

namespace Saponify.Analysis;

/// <summary>The rules of the library, by id.</summary>
internal static class BuiltIn
{
    internal static readonly FormulaRule[] Rules =
    [
        new UseOneUnitForLyeAndFats(),
        new WritePercentAsPercent(),
        new MatchTheAlkaliToItsMass(),
        new GiveEveryLineAnAmount(),
        new ListEachFatOnce(),
        new CheckTheSizeOfTheBatch(),
        new WeighRatherThanPour(),
        new CheckTheUnitOfTemperatures(),
        new KeepAlkaliWithinDemand(),
        new KeepLyeHeavyUnlikely(),
        new KnowTheWorstCase(),
        new GiveEveryFatAUsableValue(),
        new DontRelyOnUnlistedFat(),
        new DissolveInEnoughWater(),
        new AskForThePotashCertificate(),
        new AskForTheSodaCertificate(),
        new DoubtPurePotash(),
        new DivideByThePurity(),
        new CountTheSuperfatOnce(),
        new KeepPotashOutOfBars(),
        new UseAScaleFineEnough(),
        new StayWithinTheScale(),
        new ChooseAUsualSuperfat(),
        new AddLateFatsForSure(),
        new SayWhatTheFatIs(),
        new SayWhatTheAcidIs(),
        new SayHowMuchTakesUpLye(),
        new KeepAcidsWithinTheAlkali(),
        new ListAFat(),
        new WeighSomeAlkali(),
        new KeepBicarbonateOutOfLye(),
        new KeepTheBatchPossible(),
        new LeaveWaterForTheLye(),
    ];
}
