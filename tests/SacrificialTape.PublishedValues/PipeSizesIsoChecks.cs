using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;

namespace SacrificialTape.PublishedValues;

/// <summary>Outside diameters of ISO 4200 series 1, and where a DN alone does not say which pipe is meant.</summary>
internal static class PipeSizesIsoChecks
{
    private const double NotListed = -1;
    private const double Refused = -2;

    internal static CheckGroup Group => new(
        "ISO 4200, as EN 10220, series 1: outside diameters",
        "Recalled. At DN 20, 25, 32, 65, 125 and 300 it differs from ASME B36.10M, so that a DN without its standard must be refused there; where the two agree it must be taken.",
        [.. Cases()]);

    // DN, outside diameter, whether ASME gives another one.
    private static readonly (int Dn, double Mm, bool Ambiguous)[] Sizes =
    [
        (15, 21.3, false), (20, 26.9, true), (25, 33.7, true), (32, 42.4, true), (40, 48.3, false), (50, 60.3, false),
        (65, 76.1, true), (80, 88.9, false), (100, 114.3, false), (125, 139.7, true), (150, 168.3, false),
        (200, 219.1, false), (250, 273.0, false), (300, 323.9, true), (350, 355.6, false), (400, 406.4, false),
        (450, 457, false), (500, 508, false), (600, 610, false), (700, 711, false), (800, 813, false), (900, 914, false),
        (1000, 1016, false), (1050, 1067, false), (1100, 1118, false), (1200, 1219, false),
    ];

    private static readonly int[] OutsideSeries1 = [90, 550, 650, 750, 850, 950, 1150];

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((int dn, double mm, bool ambiguous) in Sizes)
        {
            yield return Case(
                FormattableString.Invariant($"iso/dn-{dn}/mm"), FormattableString.Invariant($"DN {dn}, series 1"),
                mm, NotListed, () => PipeSize.FromDn(dn, PipeStandard.Iso4200Series1));
            yield return Case(
                FormattableString.Invariant($"iso/dn-{dn}/alone"), FormattableString.Invariant($"DN {dn} without its standard"),
                ambiguous ? Refused : mm, Refused, () => PipeSize.FromDn(dn));
        }

        foreach (int dn in OutsideSeries1)
        {
            yield return Case(
                FormattableString.Invariant($"iso/dn-{dn}/mm"), FormattableString.Invariant($"DN {dn}, series 1"),
                NotListed, NotListed, () => PipeSize.FromDn(dn, PipeStandard.Iso4200Series1));
        }
    }

    private static PublishedCase Case(string id, string what, double expected, double whenRefused, Func<PipeSize> size) => new()
    {
        Id = id,
        What = what,
        Evidence = Evidence.From(References.PipeSizesIso),
        Expected = expected,
        Tolerance = 0,
        Unit = "mm",
        Compute = () =>
        {
            try
            {
                return size().OutsideDiameter.Millimeters;
            }
            catch (ArgumentException)
            {
                return whenRefused;
            }
        },
        Show = static number => number switch
        {
            NotListed => "not listed",
            Refused => "refused as ambiguous",
            _ => number.ToString("G7", CultureInfo.InvariantCulture),
        },
    };
}
