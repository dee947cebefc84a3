using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Panels.</content>
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
}
