using System.Globalization;
using System.Text.RegularExpressions;
using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Jobs;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Which metal of a couple is the anode by printed potentials, and whether the findings say the same.</summary>
internal static partial class GalvanicSeriesChecks
{
    internal static CheckGroup Group => new(
        "Couples by the galvanic series",
        "Potentials in flowing seawater against calomel as printed. The gap to zinc decides which metal is the anode; the library's findings on magnesium, copper, brass and stainless steel must speak for exactly those couples, and the gaps in their words must be those of the table. In other waters gaps differ: sources disagree on steel by up to 0.19 V.",
        [.. Gaps(), .. Findings(), .. Words()]);

    private static IEnumerable<PublishedCase> Gaps()
    {
        // Printed: least and most negative of each metal. Zinc lies between -0.98 and -1.03 V.
        foreach ((string metal, double noblest, double basest, double least, double most, SourceReference source) in new[]
        {
            ("mild steel", -0.60, -0.72, 0.26, 0.43, References.GalvanicSeries), ("copper", -0.30, -0.37, 0.61, 0.73, References.NobleMetals),
            ("brass and bronze", -0.25, -0.40, 0.58, 0.78, References.NobleMetals), ("stainless steel 316, passive", 0.0, -0.10, 0.88, 1.03, References.NobleMetals),
            ("magnesium", -1.60, -1.63, -0.65, -0.57, References.GalvanicSeries),
        })
        {
            Evidence evidence = Evidence.From(source, "ends of both rows subtracted");
            yield return Case($"gap-{metal}-least", $"zinc to {metal}, least driving voltage", least, 1e-9, "V", evidence, () => Gap(basest, -0.98));
            yield return Case($"gap-{metal}-most", $"zinc to {metal}, most", most, 1e-9, "V", evidence, () => Gap(noblest, -1.03));
        }
    }

    // 1 where zinc is the anode of the couple by the table, 0 where it is the cathode: there a finding must stop the line.
    private static IEnumerable<PublishedCase> Findings()
    {
        Evidence series = Evidence.From(References.GalvanicSeries, "magnesium lies below zinc, steel above it");
        yield return Case("stop-magnesium", "tape on magnesium, the baser metal: findings that stop", 1, 0, "findings", series, static () => Stops(SubstrateMetal.Magnesium));
        yield return Case("stop-steel", "tape on mild steel, the nobler metal: findings that stop", 0, 0, "findings", series, static () => Stops(SubstrateMetal.CarbonSteel));
        Evidence noble = Evidence.From(References.NobleMetals, "far above zinc: it goes fast");
        yield return Case("warn-copper", "copper that touches the steel: findings of the couple", 1, 0, "findings", noble, static () => Couple(SiteHazard.CopperCouple, RuleIds.CopperCouple));
        yield return Case("warn-stainless", "stainless steel that touches the steel: findings of the couple", 1, 0, "findings", noble, static () => Couple(SiteHazard.StainlessContact, RuleIds.StainlessContact));
    }

    // The gaps that the rules name in words.
    private static IEnumerable<PublishedCase> Words()
    {
        foreach ((string rule, double least, double most) in new[] { (RuleIds.CopperCouple, 0.58, 0.78), (RuleIds.StainlessContact, 0.88, 1.03) })
        {
            Evidence evidence = Evidence.From(References.NobleMetals, "0.98 less the noblest or basest of the row, and 1.03 less the noblest");
            yield return Case($"words-{rule}-least", $"least gap that {rule} names", least, 1e-9, "V", evidence, () => Named(rule, 0));
            yield return Case($"words-{rule}-most", $"most gap that {rule} names", most, 1e-9, "V", evidence, () => Named(rule, 1));
        }
    }

    private static double Gap(double metal, double zinc) => new DrivingVoltage(
        ElectrodePotential.FromVolts(metal, ReferenceElectrode.Calomel), ElectrodePotential.FromVolts(zinc, ReferenceElectrode.Calomel)).Voltage.Volts;

    private static double Named(string rule, int at) =>
        double.Parse(Volts().Matches(RuleSet.Default[rule].Basis.Note)[at].Value, CultureInfo.InvariantCulture);

    private static int Stops(SubstrateMetal metal) => Judge(new SteelCondition(metal)).Count(static one => one.Severity == Severity.Stop);

    private static int Couple(SiteHazard hazard, string rule) =>
        Judge(new SteelCondition(hazards: new LineHazards([hazard]))).Count(one => one.Rule.Id == rule);

    private static ValueList<Finding> Judge(SteelCondition steel)
    {
        var pipe = new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(3));
        var strip = new StripStock(new Tape(new Foil(Length.FromMillimeters(0.1)), new Adhesive(Length.FromMillimeters(0.025))), Length.FromMillimeters(100), Length.FromMeters(50));
        var lay = new RingLay(pipe, strip, Length.FromMillimeters(15), new LayChoices(Length.FromMillimeters(25), Length.FromMillimeters(2)));
        var line = new SurveyLine("check", lay, ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(10)), steel);
        var job = new Job("check", [line], new TakeOff.TakeOffChoices(Length.FromMillimeters(50), Length.FromMeters(1), Contingency.FromFraction(0.05)));
        return job.Estimate().Lines[0].Findings;
    }

    [GeneratedRegex(@"\d\.\d\d")]
    private static partial Regex Volts();

    private static PublishedCase Case(string id, string what, double expected, double tolerance, string unit, Evidence evidence, Func<double> compute) => new()
    {
        Id = "galvanic-series/" + id.Replace(' ', '-').Replace(",", string.Empty, StringComparison.Ordinal),
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
