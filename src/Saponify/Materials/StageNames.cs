namespace Saponify;

/// <summary>The words of the stages.</summary>
internal static class StageNames
{
    /// <summary>How formula files name the stage of an additive.</summary>
    internal static string InFile(this Stage stage) => stage switch
    {
        Stage.LyeLiquid => "lyeLiquid",
        Stage.Fats => "fats",
        Stage.Trace => "trace",
        _ => "top",
    };
}
