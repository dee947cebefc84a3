using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Panels, sections, edges and supports.</content>
public sealed partial class ShownWorkings
{
    [Property]
    public void Of_panels(SpanCase given)
    {
        double size = 20 + given.SpanMm;
        PanelOpening round = PanelOpening.Circular(Mm(size / 12), 2);
        PanelOpening square = PanelOpening.Rectangular(Mm(size / 20), Mm(size / 15));
        Surface[] surfaces =
        [
            new RectangularPanel(Mm(size), Mm(given.WidthMm)),
            new RectangularPanel(Mm(size), Mm(size), [round, square, PanelOpening.Circular(Mm(size / 11))]),
            new CircularPanel(Mm(size), [square, round]),
            new AnnularPanel(Mm(size), Mm(size / 2), [round]),
            new CorrugatedPanel(Mm(size), Mm(size / 4), Mm(size / 5), Mm(given.LapMm), 7, Mm(given.WidthMm), Mm(given.LapMm)),
        ];
        Assert.All(surfaces, static surface => Ends(Checked(surface), surface.Area.SquareMeters));
    }

    [Property]
    public void Of_sections(SpanCase given)
    {
        double h = 20 + given.WidthMm;
        Length long_ = Mm(given.SpanMm);
        Section[] sections =
        [
            new ISection(Mm(h), Mm(h / 2), Mm(h / 20), Mm(h / 10), Mm(h / 8), long_),
            Channel.WithParallelFlanges(Mm(h), Mm(h / 3), Mm(h / 20), Mm(h / 10), Mm(h / 12), long_),
            Channel.WithTaperedFlanges(Mm(h), Mm(h / 3), Mm(h / 20), Mm(h / 10), Mm(h / 12), Mm(h / 40), Angle.FromDegrees(4.574), long_),
            new AngleSection(Mm(h), Mm(h / 2), Mm(h / 10), Mm(h / 8), Mm(h / 16), long_),
            new TeeSection(Mm(h), Mm(h / 2), Mm(h / 20), Mm(h / 10), Mm(h / 8), long_),
            RectangularHollowSection.FromOutside(Mm(h), Mm(h / 2), Mm(h / 20), Mm(h / 9), long_),
            RectangularHollowSection.FromInside(Mm(h), Mm(h / 2), Mm(h / 20), Mm(h / 9), long_),
            RectangularHollowSection.HotFinished(Mm(h), Mm(h / 2), Mm(h / 20), long_),
            RectangularHollowSection.ColdFormed(Mm(h), Mm(h / 2), Mm(h / 30), long_),
            CircularHollowSection.FromOutside(Mm(h), long_),
            CircularHollowSection.FromInside(Mm(h), Mm(5), long_),
            .. SectionSizes.All.Select(size => size.OfLength(long_)),
        ];
        Assert.All(sections, static section =>
        {
            IReadOnlyDictionary<string, double> shown = Checked(section);
            Ends(shown, section.Area.SquareMeters);
            Near.Equal(section.Perimeter.Millimeters, shown["U"], 1e-15);
        });
    }

    [Property]
    public void Of_edges_and_supports(SpanCase given)
    {
        double size = 20 + given.WidthMm;
        Surface[] surfaces =
        [
            new SheetEdge(Mm(10 * size), Mm(6), Mm(size / 2), Mm(given.LapMm / 2), 3, 2),
            SheetEdge.AroundRectangle(Mm(2 * size), Mm(size), Mm(6), Mm(size / 3), Mm(0)),
            WindowOpening.Rectangular(Mm(given.SpanMm), Mm(size), Mm(6), Mm(given.LapMm), Mm(30)),
            WindowOpening.Circular(Mm(size), Mm(6), Mm(given.LapMm), Mm(30)),
            new PipeStrap(Mm(size), Mm(50), Mm(6), Angle.FromDegrees(200), Mm(given.LapMm), StrapFaces.Both),
            new PipeStrap(Mm(size), Mm(50), Mm(6), Angle.FromDegrees(360), Mm(0), StrapFaces.Outer),
            new TaperedColumn(Mm(size), Mm(size / 2), Mm(given.SpanMm)),
            new TaperedColumn(Mm(size), Mm(size / 2), Mm(given.SpanMm), new BasePlate(Mm(2 * size), Mm(3 * size), Mm(20), 4, Mm(size / 5))),
            new Washer(Mm(size), Mm(size / 2), 12),
            new MeasuredArea(Area.FromSquareMeters(given.SpanMm), AreaAllowance.FromFraction(0.15), "paced out by hand, north side guessed"),
        ];
        Assert.All(surfaces, static surface => Ends(Checked(surface), surface.Area.SquareMeters));
        foreach (double width in new[] { 1.0, 1.6, 2, 2.9, 5.3 })
        {
            var cutting = new WasherCutting(new Washer(Mm(size), Mm(size / 2)), Mm(width * size), Mm(size + given.SpanMm), Mm(given.LapMm / 10));
            IReadOnlyDictionary<string, double> shown = Checked(cutting);
            Near.Equal(cutting.Count, shown["N"], 0);
            Ends(shown, cutting.Yield.Fraction);
        }
    }
}
