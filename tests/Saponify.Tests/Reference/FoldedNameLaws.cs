using FsCheck;
using FsCheck.Fluent;
using Saponify.Internals;
using Saponify.Tests.Support;

namespace Saponify.Tests.Reference;

/// <summary>Names fold the same way whatever their case and accents, and folding twice changes nothing.</summary>
public class FoldedNameLaws
{
    private static readonly Gen<string> s_names = Gen.ArrayOf(Gen.Frequency(
        (6, Gen.Elements("olive oil karité crème brûlée Ærø ßüß 36 % café-crème".ToCharArray())),
        (1, Gen.Elements(" -_.,;:'’/()\u0301\u0308İıŁø石鹸\U0001F9FC".ToCharArray())),
        (1, Gen.Choose(0, 0xFFFF).Select(i => (char)i)))).Select(c => new string(c));

    [Law]
    public Property Folding_IsIdempotent() => Prop.ForAll(s_names.ToArbitrary(), name => FoldedName.Of(FoldedName.Of(name)) == FoldedName.Of(name));

    [Law]
    public Property Comparer_AgreesWithTheFoldedText() => Prop.ForAll(s_names.ToArbitrary(), s_names.ToArbitrary(), (one, other) =>
        FoldedName.Comparer.Equals(one, other) == (FoldedName.Of(one) == FoldedName.Of(other))
        && FoldedName.Comparer.Equals(one, FoldedName.Of(one))
        && FoldedName.Comparer.GetHashCode(one) == FoldedName.Comparer.GetHashCode(FoldedName.Of(one)));

    [Theory]
    [InlineData("Karité", "KARITE")]
    [InlineData("café-crème", "CAFE CREME")]
    [InlineData("Cow's milk, whole", "COWS MILK WHOLE")]
    [InlineData("36 % cream", "36 % CREAM")]
    [InlineData("Œuf, Ærø, Straße", "OEUF AERO STRASSE")]
    [InlineData("ığdır Łódź", "IGDIR LODZ")]
    [InlineData("- . -", "")]
    [InlineData("石鹸", "石鹸")]
    public void Examples(string name, string folded) => Assert.Equal(folded, FoldedName.Of(name));

    [Law]
    public Property PowersOfTen_AreRoundedOnce_OnTheShortWayToo() => Prop.ForAll(
        Gen.Choose(-2_000_000_000, 2_000_000_000).ToArbitrary(), Gen.Choose(0, 9).ToArbitrary(),
        (digits, decimals) =>
        {
            double value = double.Parse(FormattableString.Invariant($"{digits}e-{decimals}"), System.Globalization.CultureInfo.InvariantCulture);
            return Decimals.TimesPowerOfTen(value, -2).Equals(double.Parse(FormattableString.Invariant($"{digits}e-{decimals + 2}"), System.Globalization.CultureInfo.InvariantCulture));
        });
}
