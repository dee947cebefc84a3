using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Lengths of butt-weld fittings by ASME B16.9.</summary>
internal static class ButtWeldFittingChecks
{
    internal static CheckGroup Group => new(
        "ASME B16.9: lengths of reducers, tees and caps",
        "Equal tees as read in a published table of the standard; reducers, reducing tees and caps recalled, check before use. Whole millimetres, as in the tables.",
        [.. Cases()]);

    private static readonly (string Nps, double Mm)[] Reducers =
    [
        ("1", 51), ("2", 76), ("3", 89), ("4", 102), ("6", 140), ("8", 152), ("10", 178), ("12", 203), ("16", 356), ("24", 508),
    ];

    private static readonly (string Nps, double Run, double Outlet)[] Tees =
    [
        ("1/2", 25, 25), ("1", 38, 38), ("2", 64, 64), ("3", 86, 86), ("4", 105, 105), ("6", 143, 143), ("8", 178, 178),
        ("10", 216, 216), ("12", 254, 254), ("16", 305, 305), ("24", 432, 432), ("48", 889, 838),
    ];

    // In inches, as the inch tables print them: 2 in, 3 in, 3 1/2 in and so on.
    private static readonly (string Run, string Branch, double Inches)[] ReducingTees =
    [
        ("2", "1", 2), ("3", "2", 3), ("4", "2", 3.5), ("4", "3", 3.88), ("6", "3", 4.88), ("6", "4", 5.12),
        ("8", "4", 6.12), ("8", "6", 6.62), ("10", "6", 7.62), ("10", "8", 8), ("12", "8", 9), ("12", "10", 9.5),
    ];

    private static readonly (string Nps, double Inches)[] Caps =
    [
        ("1/2", 1), ("1", 1.5), ("2", 1.5), ("3", 2), ("4", 2.5), ("6", 3.5), ("8", 4), ("10", 5), ("12", 6), ("16", 7), ("24", 10.5),
    ];

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((string nps, double mm) in Reducers)
        {
            yield return Case("reducer", nps, "length of a reducer", References.ReducerLengths, mm, 0, () => FittingSizes.ReducerLength(PipeSize.FromNps(nps)));
        }

        foreach ((string nps, double run, double outlet) in Tees)
        {
            PipeSize size = PipeSize.FromNps(nps);
            yield return Case("tee-run", nps, "centre to end of the run of an equal tee", References.EqualTees, run, 0, () => FittingSizes.TeeRunCentreToEnd(size));
            yield return Case("tee-branch", nps, "centre to end of the branch of an equal tee", References.EqualTees, outlet, 0, () => FittingSizes.TeeBranchCentreToEnd(size, size));
        }

        foreach ((string run, string branch, double inches) in ReducingTees)
        {
            yield return Case(
                "tee-reduced", $"{run}x{branch}", "centre to end of the branch of a reducing tee", References.ReducingTees,
                inches * 25.4, 0.63, () => FittingSizes.TeeBranchCentreToEnd(PipeSize.FromNps(run), PipeSize.FromNps(branch)));
        }

        foreach ((string nps, double inches) in Caps)
        {
            yield return Case("cap", nps, "length of a cap", References.CapLengths, inches * 25.4, 0.5, () => FittingSizes.CapLength(PipeSize.FromNps(nps)));
        }
    }

    // Tables in mm round inches to whole millimetres; the inch tables round eighths to hundredths before.
    private static PublishedCase Case(
        string kind, string nps, string what, SourceReference source, double mm, double tolerance, Func<Length> ask) => new()
        {
            Id = $"b16-9/{kind}/{nps.Replace(' ', '-')}",
            What = $"{what}, NPS {nps}",
            Evidence = Evidence.From(source),
            Expected = mm,
            Tolerance = tolerance,
            Unit = "mm",
            Compute = () => ask().Millimeters,
        };
}
