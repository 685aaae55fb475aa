using System.Runtime.InteropServices;

namespace Saponify.Benchmarks;

/// <summary>The figures of a <see cref="LyeBalance"/> as bare numbers.</summary>
[StructLayout(LayoutKind.Auto)]
public struct PlainBalance
{
    public double Hydroxide;
    public double RecipeHydroxide;
    public double LateHydroxide;
    public double LiquidFatHydroxide;
    public double AdditiveFatHydroxide;
    public double AcidHydroxide;
    public double LyeLiquidGrams;
    public double WaterShortGrams;
    public double AllWaterGrams;
    public double DissolvingWaterGrams;
    public double PureAlkaliGrams;
    public double AlkaliGrams;
    public double BatchGrams;
    public bool CanBeWeighed;
}
