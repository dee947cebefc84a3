using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Fittings, heads, shells and flanges.</content>
public sealed partial class ShownWorkings
{
    [Property]
    public void Of_fittings(SpanCase given)
    {
        double large = 10 + (given.SpanMm / 10);
        double small = large * (0.02 + (0.97 * given.LapMm / given.WidthMm));
        Surface[] surfaces =
        [
            new ConcentricReducer(Mm(large), Mm(Math.Max(1, small)), Mm(given.WidthMm)),
            new EccentricReducer(Mm(large), Mm(Math.Max(1, small)), Mm(given.WidthMm)),
            new Tee(Mm(large), Mm(Math.Max(1, small)), Mm(large), Mm(large)),
        ];
        Assert.All(surfaces, static surface => Ends(Checked(surface), surface.Area.SquareMeters));
    }
}
