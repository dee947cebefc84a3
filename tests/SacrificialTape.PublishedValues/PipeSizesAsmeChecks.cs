using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;

namespace SacrificialTape.PublishedValues;

/// <summary>Outside diameters of ASME B36.10M: the mm column as carried elsewhere, and the recalled inch column.</summary>
internal static class PipeSizesAsmeChecks
{
    internal static CheckGroup Group => new(
        "ASME B36.10M: outside diameters",
        "The mm column as an open piping library carries it. The inch column is recalled; times 25.4 it must round to the mm of the table, to a tenth up to NPS 16 and to a whole mm from NPS 18. NPS 10 and 12 lie exactly between two tenths.",
        [.. Cases()]);

    private static readonly (string Nps, double Mm, double Inch)[] Sizes =
    [
        ("1/2", 21.3, 0.840), ("3/4", 26.7, 1.050), ("1", 33.4, 1.315), ("1 1/4", 42.2, 1.660), ("1 1/2", 48.3, 1.900),
        ("2", 60.3, 2.375), ("2 1/2", 73.0, 2.875), ("3", 88.9, 3.500), ("3 1/2", 101.6, 4.000), ("4", 114.3, 4.500),
        ("5", 141.3, 5.563), ("6", 168.3, 6.625), ("8", 219.1, 8.625), ("10", 273.0, 10.750), ("12", 323.8, 12.750),
        ("14", 355.6, 14), ("16", 406.4, 16), ("18", 457, 18), ("20", 508, 20), ("22", 559, 22), ("24", 610, 24),
        ("26", 660, 26), ("28", 711, 28), ("30", 762, 30), ("32", 813, 32), ("34", 864, 34), ("36", 914, 36),
        ("38", 965, 38), ("40", 1016, 40), ("42", 1067, 42), ("44", 1118, 44), ("46", 1168, 46), ("48", 1219, 48),
    ];

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((string nps, double mm, double inch) in Sizes)
        {
            string id = "asme/nps-" + nps.Replace(' ', '-');
            yield return Case(id + "/mm", $"NPS {nps}, mm column", mm, 0, Evidence.From(References.PipeSizesAsme), nps);
            yield return Case(
                id + "/inch",
                FormattableString.Invariant($"NPS {nps}, {inch} in x 25.4"),
                inch * 25.4,
                inch < 18 ? 0.05 : 0.5,
                Evidence.From(References.PipeSizesAsmeInch),
                nps);
        }
    }

    private static PublishedCase Case(
        string id, string what, double expected, double tolerance, Evidence evidence, string nps) => new()
        {
            Id = id,
            What = what,
            Evidence = evidence,
            Expected = expected,
            Tolerance = tolerance,
            Unit = "mm",
            Compute = () => PipeSize.FromNps(nps).OutsideDiameter.Millimeters,
        };
}
