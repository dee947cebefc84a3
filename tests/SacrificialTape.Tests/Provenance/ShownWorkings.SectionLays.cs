using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Lays on sections, edges and straps.</content>
public sealed partial class ShownWorkings
{
    [Property(Arbitrary = [typeof(SectionCases)])]
    public void Of_section_lays(SectionCase given)
    {
        foreach (SectionPattern pattern in Enum.GetValues<SectionPattern>())
        {
            // Wide enough to get past any fold.
            var lay = new SectionLay(given.Section, Stock(2000), Mm(0), pattern, choices: Choices(1, 10, 2));
            IReadOnlyDictionary<string, double> shown = Checked(lay);
            Near.Equal(lay.LayersEverywhere, shown["n_all"], 0);
            Ends(shown, lay.LayersOnAverage.Ratio);
            Near.Equal(given.Section.Perimeter.Millimeters, shown["U"], 1e-12);
        }

        var box = RectangularHollowSection.FromOutside(Mm(100 + given.WidthMm), Mm(100), Mm(5), Mm(12), Mm(given.LengthMm));
        var rings = new SectionRingLay(box, Stock(given.WidthMm), Mm(given.LapMm), Choices(1, 10, 2));
        IReadOnlyDictionary<string, double> ring = Checked(rings);
        Near.Equal(rings.Rings, ring["n"], 0);
        Near.Equal(rings.Strips[0].Length.Millimeters, ring["L"], 0, absolute: 0.000501);
    }

    [Property]
    public void Of_edge_and_strap_lays(SpanCase given)
    {
        StripStock stock = Stock(200 + given.WidthMm);
        EdgeLay[] lays =
        [
            EdgeLay.OfSheet(new SheetEdge(Mm(10 * given.SpanMm), Mm(6), Mm(40), Mm(30)), stock),
            EdgeLay.OfSheet(new SheetEdge(Mm(2000 + given.SpanMm), Mm(6), Mm(40), Mm(30), 5, 1), stock, null, Choices(1, 12)),
            EdgeLay.OfOpening(WindowOpening.Rectangular(Mm(300), Mm(given.SpanMm), Mm(6), Mm(40), Mm(30)), stock),
            EdgeLay.OfOpening(WindowOpening.Circular(Mm(2000), Mm(6), Mm(40), Mm(30)), stock),
        ];
        Assert.All(lays, static lay =>
        {
            IReadOnlyDictionary<string, double> shown = Checked(lay);
            Near.Equal(lay.ExtraReach.Millimeters, shown["x"], 0);
            Assert.True(!shown.TryGetValue("n_all", out double all) || all == lay.LayersEverywhere);
            Assert.True(!shown.TryGetValue("e_in", out double strain) || strain == lay.Stretch.Fraction);
        });
        foreach (StrapFaces faces in Enum.GetValues<StrapFaces>())
        {
            var strap = new StrapLay(
                new PipeStrap(Mm(300), Mm(Math.Min(20_000, given.SpanMm)), Mm(6), Angle.FromDegrees(360), Mm(0), faces), Stock(given.WidthMm), Mm(given.LapMm));
            Near.Equal(strap.Pucker.Fraction, Checked(strap)["e_out"], 0);
        }
    }
}
