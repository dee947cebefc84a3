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
            HemisphericalHead.FromOutside(Mm(large), Mm(given.LapMm)),
            EllipsoidalHead.FromOutside(Mm(large), Mm(1 + (large * given.LapMm / given.WidthMm)), Mm(given.LapMm)),
            EllipsoidalHead.FromInside(Mm(large), Mm(1 + (large * given.LapMm / given.WidthMm)), Mm(10), Mm(given.LapMm)),
            EllipsoidalHead.FromInside(Mm(large), Mm(large / 2), Mm(10), Mm(given.LapMm)),
            EllipsoidalHead.FromInside(Mm(large), Mm(large), Mm(10), Mm(given.LapMm)),
            EllipsoidalHead.TwoToOneFromInside(Mm(large), Mm(10), Mm(given.LapMm)),
            TorisphericalHead.FromOutside(Mm(large), Mm(large * (0.5 + (given.LapMm / given.WidthMm))), Mm(large * 0.06), Mm(given.LapMm)),
            TorisphericalHead.FromOutside(Mm(large), Mm(large), Mm(large / 2), Mm(given.LapMm)),
            TorisphericalHead.Kloepper(Mm(large), Mm(large / 100), Mm(given.LapMm)),
            ConicalHead.FromOutside(Mm(large), Mm(given.WidthMm), Mm(given.LapMm)),
            FlatHead.FromOutside(Mm(large), Mm(given.LapMm)),
            Cap.FromOutside(Mm(large), Mm(large)),
            new Shell(Mm(large), Mm(given.WidthMm), ShellAxis.Upright),
            new Shell(
                Mm(large),
                Mm(10 * large),
                ShellAxis.Lying,
                [ShellOpening.Round(Mm(Math.Max(1, small)), 2), ShellOpening.Rectangular(Mm(large / 2), Mm(large / 3)), ShellOpening.Round(Mm(large / 2))]),
            new Flange(Mm(3 * large), Mm(given.WidthMm), Mm(large), Mm(1.1 * large), 8, Mm(large / 10), FlangeParts.Rim | FlangeParts.Back | FlangeParts.Front),
            new Flange(Mm(3 * large), Mm(given.WidthMm), Mm(large), Mm(1.1 * large), 0, Mm(0), FlangeParts.Back),
            new Flange(FlangeSize.Class150(PipeSize.FromNps("6")), Mm(168.3), FlangeParts.Rim | FlangeParts.Front),
        ];
        Assert.All(surfaces, static surface => Ends(Checked(surface), surface.Area.SquareMeters));
        Assert.All(surfaces.OfType<Head>(), static head => Ends(Checked(head), head.DishArea.SquareMeters));
        Near.Equal(Math.Max(1, small) / large, Checked(surfaces[2])["k"], 1e-12);
        Ends(Checked(FlangeSize.Class150(PipeSize.FromNps("4"))), 23.9 - 1.6);
        var torisphere = TorisphericalHead.Korbbogen(Mm(large), Mm(large / 100), Mm(given.LapMm));
        Near.Equal(torisphere.Depth.Millimeters, Checked(torisphere)["h_o"], 1e-12);
    }
}
