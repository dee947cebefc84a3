using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Classes of pollution and wetness, at their bounds and just above, by edition; one worked site.</summary>
internal static class SiteClassChecks
{
    internal static CheckGroup Group => new(
        "ISO 9223: classes of pollution and wetness",
        "Bounds by edition; the upper one belongs to the class. The editions of 1992 and 2012 disagree on sulfur dioxide. The hangar is a printed problem whose classes are read off the bounds by hand.",
        [.. Cases()]);

    private static readonly double[] WetHoursADay = [5.8, 4.1, 5.5, 6.0, 8.9, 11.6, 12.2, 13.5, 11.3, 9.5, 7.3, 4.8];

    private static IEnumerable<PublishedCase> Cases() =>
    [
        .. Bounds("so2-2012", "P", [4, 24], 0, References.SulfurDioxideClasses2012, static value => Sulfur(value, Iso9223Edition.Of2012)),
        .. Bounds("so2-2012-upper", "P", [80, 200], 2, References.SulfurDioxideConversion, static value => Sulfur(value, Iso9223Edition.Of2012)),
        .. Bounds("so2-1992", "P", [10, 35, 80, 200], 0, References.PollutionClasses1992, static value => Sulfur(value, Iso9223Edition.Of1992)),
        .. Bounds("so2-concentration-2012", "P", [5, 30, 90, 250], 0, References.SulfurDioxideConversion, static value => (double?)(int?)PollutionClasses.SulfurDioxide(
            MassConcentration.FromMicrogramsPerCubicMeter(value), Iso9223Edition.Of2012) ?? 4),
        .. Bounds("chloride-1992", "S", [3, 60, 300, 1500], 0, References.PollutionClasses1992, static value => Chloride(value, Iso9223Edition.Of1992)),
        .. Bounds("chloride-2012", "S", [3, 60, 300, 1500], 0, References.ChlorideClasses2012, static value => Chloride(value, Iso9223Edition.Of2012)),
        .. Bounds("wetness-1992", "tau", [10, 250, 2500], 1, References.PollutionClasses1992, static value => Wet(value, Iso9223Edition.Of1992)),
        .. Bounds("wetness-1992-upper", "tau", [5500], 4, References.WetnessHours, static value => Wet(value, Iso9223Edition.Of1992)),
        .. Bounds("wetness-2012", "tau", [10, 250, 2500, 5500], 1, References.ChlorideClasses2012, static value => Wet(value, Iso9223Edition.Of2012)),
        .. Conversion(),
        .. Hangar(),
    ];

    private static IEnumerable<PublishedCase> Bounds(
        string id, string letter, double[] upper, int first, SourceReference source, Func<double, double> classOf)
    {
        for (int i = 0; i < upper.Length; i++)
        {
            double bound = upper[i];
            yield return Case(FormattableString.Invariant($"{id}/{bound}"), FormattableString.Invariant($"{id}: at {bound}"), first + i, letter, Evidence.From(source), () => classOf(bound));
            yield return Case(FormattableString.Invariant($"{id}/above-{bound}"), FormattableString.Invariant($"{id}: just above {bound}"), first + i + 1, letter, Evidence.From(source), () => classOf(bound * 1.001));
        }
    }

    private static IEnumerable<PublishedCase> Conversion()
    {
        // The factor fits the bounds of the first two classes: 5 to 4 and 30 to 24.
        foreach ((double concentration, double deposition) in new[] { (5.0, 4.0), (30, 24), (250, 200) })
        {
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"site-class/conversion-{concentration}"),
                What = FormattableString.Invariant($"deposition of sulfur dioxide at {concentration} ug/m3"),
                Evidence = Evidence.From(References.SulfurDioxideConversion, "the factor against the bounds of both columns"),
                Expected = deposition,
                Tolerance = 1e-12,
                Unit = "mg/(m2.d)",
                Compute = () => PollutionClasses.SulfurDioxideDeposition(
                    MassConcentration.FromMicrogramsPerCubicMeter(concentration)).MilligramsPerSquareMeterDay,
            };
        }
    }

    private static IEnumerable<PublishedCase> Hangar()
    {
        Evidence evidence = Evidence.FirstPrinciples("314 > 300; 35 and 24 < 42 <= 80; 3067.0 h lies in 2500 to 5500 h", Sources.HangarProblem);
        double hours = WetHoursADay.Select(static (daily, month) => daily * DateTime.DaysInMonth(2025, month + 1)).Sum();
        yield return Case("hangar/chloride", "hangar, chloride 314 mg/(m2.d)", 3, "S", evidence, static () => Chloride(314, Iso9223Edition.Of1992));
        foreach (Iso9223Edition edition in Enum.GetValues<Iso9223Edition>())
        {
            yield return Case($"hangar/so2-{(int)edition}", $"hangar, sulfur dioxide 42 mg/(m2.d), edition of {(int)edition}", 2, "P", evidence, () => Sulfur(42, edition));
            yield return Case(
                $"hangar/wetness-{(int)edition}",
                FormattableString.Invariant($"hangar, {hours:0.0} h wet in a year, edition of {(int)edition}"), 4, "tau", evidence, () => Wet(hours, edition));
        }
    }

    private static double Sulfur(double value, Iso9223Edition edition) =>
        (double?)(int?)PollutionClasses.SulfurDioxide(DepositionRate.FromMilligramsPerSquareMeterDay(value), edition) ?? 4;

    private static double Chloride(double value, Iso9223Edition edition) =>
        (double?)(int?)PollutionClasses.Chloride(DepositionRate.FromMilligramsPerSquareMeterDay(value), edition) ?? 4;

    private static double Wet(double hours, Iso9223Edition edition) => (int)PollutionClasses.Wetness(Duration.FromHours(hours), edition);

    private static PublishedCase Case(string id, string what, int expected, string letter, Evidence evidence, Func<double> compute) => new()
    {
        Id = "site-class/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = 0,
        Unit = "class",
        Compute = compute,
        Show = number => number == 4 && letter != "tau" ? "above the scheme" : FormattableString.Invariant($"{letter}{number}"),
    };
}
