using System.Globalization;
using HostTool;
using SacrificialTape.Costing;
using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;
using Xunit;

namespace SacrificialTape.Examples.Tests;

/// <summary>The example host: its own shape, lay, law, rules and cost, and what it does with a rule set that does not fit.</summary>
public class HostToolTests
{
    private static readonly string ShippedRules = Path.Combine(AppContext.BaseDirectory, "site", "rules.json");

    [Fact]
    public void The_shape_lies_between_the_round_columns_inside_and_outside_it()
    {
        // Over the same height: the cone on which the flats lie, and the cone through the edges.
        Assert.All<(double Foot, double Head, double Height)>([(200, 90, 8000), (180, 90, 6000), (300, 300, 1000), (250, 100, 300)], static given =>
        {
            double area = new OctagonalColumn(Mm(given.Foot), Mm(given.Head), Mm(given.Height)).Area.SquareMeters;
            double edge = Math.Cos(Math.PI / 8);
            Assert.InRange(area, Cone(given.Foot, given.Head, given.Height), Cone(given.Foot / edge, given.Head / edge, given.Height));
        });

        // Handbooks give the perimeter of a regular octagon as 3.3137 times its width across flats.
        Assert.Equal(3.3137 * 0.2 * 3, new OctagonalColumn(Mm(200), Mm(200), Mm(3000)).Area.SquareMeters, 1e-4);
    }

    [Fact]
    public void The_lay_accounts_for_its_strip()
    {
        FlatStripLay lay = Lay(200, 8000);
        Strip strip = Assert.Single(lay.Strips);
        Assert.Equal(8, strip.Count);
        Assert.Equal(lay.Surface.Area.SquareMeters, 8 * strip.Cover.Meters * 0.1, 1e-6);
        Assert.Equal(100 - (200 * (Math.Sqrt(2) - 1)), lay.LapAtFoot.Millimeters, 1e-9);
        Assert.Equal(1, lay.LayersEverywhere);
        Assert.Equal(strip.Length.Meters / strip.Cover.Meters, lay.LayersOnAverage.Ratio, 1e-6);
        Assert.Equal(lay.LapAtFoot.Millimeters, Shown(lay, "o"), 1e-9);
        Assert.Equal(strip.Cover.Millimeters, Shown(lay, "c"), 0.001);
        Assert.Equal(lay.Surface.Area.SquareMeters, Shown(lay.Surface, "A"), 1e-12);
    }

    [Fact]
    public void A_strip_that_does_not_fit_the_flats_is_refused_with_the_range()
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(static () => Lay(250, 8000));
        Assert.Contains("more than 103.6 and at most 111.8 mm wide", refused.Message, StringComparison.Ordinal);
        Assert.Contains("more than the 90 mm at the foot", Assert.Throws<ArgumentOutOfRangeException>(static () => new OctagonalColumn(Mm(90), Mm(200), Mm(1))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_law_is_its_own_inverse_and_slope()
    {
        var rate = CorrosionRate.FromMicrometersPerYear(4.2);
        var law = new SaltedRoadLoss(1.5, Years(10), Basis.Judgement("made up"));
        var plain = new SaltedRoadLoss(1, Years(10), Basis.Judgement("made up"));
        foreach (double um in new[] { 0, 1, 62.9, 63, 63.1, 80, 500 })
        {
            var loss = Length.FromMicrometers(um);
            Duration time = law.TimeToLoss(rate, loss).Duration;
            Assert.Equal(um, law.Loss(rate, time).Micrometers, 1e-9);
            Assert.Equal(time.Years365, law.ShowTimeToLoss(rate, loss).Steps[0].Result.Number, 1e-12);
            Assert.Equal(LinearLoss.Law.TimeToLoss(rate, loss).Duration.Years365, plain.TimeToLoss(rate, loss).Duration.Years365, 1e-9);
            double slope = law.Loss(rate, Years(time.Years365 + 0.01)).Micrometers - law.Loss(rate, time).Micrometers;
            Assert.InRange(slope / 0.01, 4.2 - 1e-9, 6.3 + 1e-9);
        }

        // 63 um are gone after ten salted years; the 17 that are left take 17/4.2.
        Assert.Equal(10 + (17 / 4.2), law.TimeToLoss(rate, Length.FromMicrometers(80)).Duration.Years365, 1e-12);
        Assert.True(law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(0), Length.FromMicrometers(80)).IsUnlimited);
    }

    [Fact]
    public void Its_rules_judge_lines_by_the_limits_of_the_file()
    {
        string shipped = Estimate();
        Assert.Contains("Stop [lighting.supply.live] LC-03", shipped, StringComparison.Ordinal);
        Assert.Contains("Warning [lighting.reach.maximum] LC-03: Piece handled from one position of the lift: 8000.19 mm against 6.5 m", shipped, StringComparison.Ordinal);
        Assert.Contains("Waived [lighting.reach.maximum] LC-02", shipped, StringComparison.Ordinal);
        Assert.DoesNotContain("[lighting.reach.maximum] LC-01", shipped, StringComparison.Ordinal);
        Assert.Contains("[lighting.reach.maximum] LC-01", Estimate(("6.5 m", "6 m")), StringComparison.Ordinal);
        string longer = Estimate(("6.5 m", "9 m"));
        Assert.DoesNotContain("Warning [lighting.reach.maximum]", longer, StringComparison.Ordinal);

        // The waiver now waives nothing, and that is told.
        Assert.Contains("waiver of lighting.reach.maximum on LC-02", longer, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_set_that_does_not_fit_is_refused_or_told()
    {
        Assert.Contains("$.rules[0].limit: '15,0 mm' has a comma", Refused([], ("\"15 mm\"", "\"15,0 mm\"")), StringComparison.Ordinal);
        Assert.Contains("has no rule 'lighting.supply.live'", Refused([], ("\"lighting.supply.live\"", "\"lighting.supply.alive\"")), StringComparison.Ordinal);
        string another = Estimate(("\"rules\": [", """
            "rules": [
                { "id": "lighting.wind.maximum", "own": true, "title": "Wind at the lift", "kind": "statement", "severity": "stop",
                  "basis": { "kind": "judgement", "note": "made up" }, "remedy": "Come down." },
            """));
        Assert.Contains("Nobody judged by [lighting.wind.maximum]: Wind at the lift", another, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pin_holds_one_rule_set()
    {
        string right = Documents.RuleSetDocument.ReadUtf8(File.ReadAllBytes(ShippedRules)).Rules.Fingerprint.ToString();
        Assert.Equal(0, Run(["--pin", right], ShippedRules, out _, out _));
        Assert.Contains("not those agreed on", Refused(["--pin", right], ("6.5 m", "6.6 m")), StringComparison.Ordinal);

        // The same limit in another unit is the same rule.
        Assert.Equal(0, RunWith(["--pin", right], out _, ("6.5 m", "650 cm")));
    }

    [Fact]
    public void Its_cases_are_asked_of_the_library_and_of_itself()
    {
        Assert.Equal(0, Run(["--verify"], ShippedRules, out string right, out _));
        Assert.EndsWith("2 of 2 agree\n", right.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Equal(1, RunWith(["--verify"], out string wrong, ("1.9882 m2", "1.9782 m2")));
        Assert.Contains("octagon-by-hand: DIFFERS", wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_follow_the_culture_that_is_asked_for_and_no_other()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string invariant = Estimate();
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(invariant, Estimate());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Equal(0, Run(["--culture", "de-DE"], ShippedRules, out string german, out _));
        Assert.Contains("8000,19 mm against 6,5 m", german, StringComparison.Ordinal);
        Assert.Equal(1, Run(["--culture", "no such"], ShippedRules, out _, out string errors));
        Assert.Contains("no such", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_lay_takes_part_in_a_choice()
    {
        var column = new OctagonalColumn(Mm(200), Mm(90), Mm(8000));
        var labour = new LabourKind(StripPurpose.Other, ApplicationMethod.ByHand, "lighting column");
        ValueList<StripStock> stocks = [Stock(100), Stock(75)];
        var choice = TapeChoice.Among(
            new LineNeeds("LC-09", ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Years(15))),
            new ChoiceOptions(
                stocks,
                [Mm(10)],
                [1],
                [new LayMaker("down the flats", column, labour, (stock, _, _) => new FlatStripLay(column, stock, Mm(6)))],
                new CostPrices([.. stocks.Select(static stock => new RollPrice(stock, new Money(68, "EUR")))], new LabourRate(new Money(46, "EUR")), [new LabourNorm(labour, LabourMeasure.Pieces, Duration.FromMinutes(12))]),
                TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05))));
        Assert.Equal(stocks[0], choice.Best?.Tried.Stock);
        Assert.Contains("75 mm does not go down a flat", Assert.Single(choice.Rejected).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Wrong_arguments_show_how_it_is_used()
    {
        Assert.Equal(2, Run(["--nonsense"], ShippedRules, out _, out string errors));
        Assert.Contains("HostTool --verify", errors, StringComparison.Ordinal);
        Assert.Equal(2, Run(["--workings", "LC-99"], ShippedRules, out _, out _));
    }

    private static double Cone(double foot, double head, double height) =>
        Math.PI * (foot + head) / 2 * Math.Sqrt((height * height) + ((foot - head) * (foot - head) / 4)) / 1e6;

    private static double Shown(IHasWorkings result, string name) =>
        result.ShowWorkings().Steps.Last(step => step.Formula.Result.Name == name).Result.Number;

    private static FlatStripLay Lay(double footMm, double heightMm) => new(new OctagonalColumn(Mm(footMm), Mm(90), Mm(heightMm)), Stock(100), Mm(6));

    private static StripStock Stock(double widthMm) => new(new Tape(new Foil(Mm(0.1)), new Adhesive(Mm(0.03))), Mm(widthMm), Length.FromMeters(25));

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static Duration Years(double value) => Duration.FromYears365(value);

    private static string Estimate(params (string Old, string New)[] changes)
    {
        Assert.Equal(0, RunWith([], out string output, changes));
        return output;
    }

    private static string Refused(string[] arguments, (string Old, string New) change)
    {
        string file = Changed([change]);
        Assert.Equal(1, Run(arguments, file, out string output, out string errors));
        File.Delete(file);
        Assert.Empty(output);
        return errors;
    }

    private static int RunWith(string[] arguments, out string output, params (string Old, string New)[] changes)
    {
        string file = Changed(changes);
        int code = Run(arguments, file, out output, out string errors);
        File.Delete(file);
        Assert.Empty(errors);
        return code;
    }

    private static string Changed((string Old, string New)[] changes)
    {
        string text = File.ReadAllText(ShippedRules);
        foreach ((string old, string young) in changes)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, young, StringComparison.Ordinal);
        }

        string file = Path.GetTempFileName();
        File.WriteAllText(file, text);
        return file;
    }

    private static int Run(string[] arguments, string rulesFile, out string output, out string errors)
    {
        using var written = new StringWriter(CultureInfo.InvariantCulture);
        using var wrong = new StringWriter(CultureInfo.InvariantCulture);
        int code = HostProgram.Run(arguments, rulesFile, written, wrong);
        output = written.ToString();
        errors = wrong.ToString();
        return code;
    }
}
