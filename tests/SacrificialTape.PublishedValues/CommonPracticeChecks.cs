using SacrificialTape.Contact;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>What the trade does: no document says so.</summary>
internal static class CommonPracticeChecks
{
    private const string HeadRule = "mark the pipe, turn once, the same wheel lands on the second mark: 100 mm strip, 20 mm lap, 80 mm between marks";
    private const string BareRule = "about 100 cm2 of bare steel for each m2 to be covered";

    internal static CheckGroup Group => new(
        "Common practice of the trade",
        "No source. These rows show that the default rules carry the trade's figures and that its own examples come out; they prove none of the figures.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach (double diameter in new[] { 60.3, 114.3, 323.9, 1219 })
        {
            yield return Case(
                FormattableString.Invariant($"wrapping-head/marks-{diameter}"),
                FormattableString.Invariant($"distance of the marks for 100 mm strip and 20 mm lap on {diameter} mm pipe"),
                80, 1e-12, "mm", HeadRule,
                () => Ask.Spiral(diameter, 100, SpiralSetting.FromLapBetweenMarks(Length.FromMillimeters(20))).Advance.Millimeters);
        }

        yield return Case(
            "bare-steel/four-windows", "4 windows of 25 cm2 under 1 m2", 100, 1e-9, "cm2/m2", BareRule,
            static () => Windows(4, 25, 1).Ratio.SquareCentimetersPerSquareMeter);
        yield return Case(
            "bare-steel/windows-needed", "windows of 50 cm2 under 12 m2", 24, 0, "windows", BareRule + "; 12 x 100/50",
            static () => Windows(0, 50, 12).WindowsNeeded(BareRatio.FromSquareCentimetersPerSquareMeter(100)));
        yield return Case(
            "bare-steel/enough", "findings on 100 cm2/m2", 0, 0, "findings", BareRule, static () => TooLittle(Windows(4, 25, 1)));
        yield return Case(
            "bare-steel/too-little", "findings on 75 cm2/m2", 1, 0, "findings", BareRule, static () => TooLittle(Windows(3, 25, 1)));

        yield return Limit(RuleIds.MinimumLap, 10, TradeUnit.Millimeter, "lap between neighbouring strips at least 10 mm");
        yield return Limit(RuleIds.MinimumFoilThickness, 0.08, TradeUnit.Millimeter, "foil stocked from some 0.08 mm");
        yield return Limit(RuleIds.MaximumFoilThickness, 0.5, TradeUnit.Millimeter, "foil stocked up to 0.5 mm");
        yield return Limit(RuleIds.MinimumStripWidth, 10, TradeUnit.Millimeter, "strip from 10 mm");
        yield return Limit(RuleIds.MaximumStripWidth, 300, TradeUnit.Millimeter, "strip up to 300 mm");
        yield return Limit(RuleIds.MaximumStripWidthOnWrappingHead, 150, TradeUnit.Millimeter, "150 mm on a wrapping head as a check value");
        yield return Limit(RuleIds.AdhesiveServiceTemperature, 80, TradeUnit.DegreeCelsius, "adhesive to about 80 degC, continuous");
        yield return Limit(RuleIds.MinimumBareRatio, 100, TradeUnit.SquareCentimeterPerSquareMeter, BareRule);
        yield return Limit(RuleIds.MinimumPatchMargin, 5, TradeUnit.Millimeter, "an oval patch at least 5 mm larger all round");
    }

    private static BareContact Windows(int count, double squareCentimeters, double squareMeters) => new(
        Area.FromSquareMeters(squareMeters), new ContactWindows(count, Area.FromSquareCentimeters(squareCentimeters)));

    private static int TooLittle(BareContact contact) =>
        contact.Judge(RuleSet.Default, "check").Count(static finding => finding.Rule.Id == RuleIds.MinimumBareRatio);

    private static PublishedCase Limit(string rule, double number, TradeUnit unit, string practice) => Case(
        "rule/" + rule,
        $"default rule {rule}",
        number,
        0,
        unit == TradeUnit.Millimeter ? "mm" : unit == TradeUnit.DegreeCelsius ? "degC" : "cm2/m2",
        practice,
        () => RuleSet.Default[rule].Limit!.Value.In(unit));

    private static PublishedCase Case(
        string id, string what, double expected, double tolerance, string unit, string practice, Func<double> compute) => new()
        {
            Id = "practice/" + id,
            What = what,
            Evidence = Evidence.CommonPractice(practice),
            Expected = expected,
            Tolerance = tolerance,
            Unit = unit,
            Compute = compute,
        };
}
