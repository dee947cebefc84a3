using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/lays-sections-and-edges.md quotes.</summary>
public static class LaysSectionsAndEdgesPage
{
    public static void Beam()
    {
        #region beam
        Section beam = SectionSizes.Find("IPE 200").OfLength(Length.FromMeters(6));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(50));
        foreach (SectionPattern pattern in Enum.GetValues<SectionPattern>())
        {
            var lay = new SectionLay(beam, stock, Length.FromMillimeters(10), pattern);
            Console.WriteLine($"{lay.Description}: {lay.LayersEverywhere} layer(s) everywhere, {lay.LayersOnAverage.Ratio:0.000} on average");
        }

        foreach (SectionStrip strip in new SectionLay(beam, stock, Length.FromMillimeters(10)).Layout)
        {
            Console.WriteLine(strip);
        }
        #endregion
    }

    public static void HollowSection()
    {
        #region hollow-section
        var post = RectangularHollowSection.ColdFormed(
            Length.FromMillimeters(100), Length.FromMillimeters(100), Length.FromMillimeters(5), Length.FromMeters(3));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(50));
        var rings = new SectionRingLay(post, stock, Length.FromMillimeters(10));
        Console.WriteLine($"{rings.Description}, each {rings.Strips[0].Length.Millimeters:0.0} mm");
        Console.WriteLine(string.Join("; ", rings.Folds));
        #endregion
    }

    public static void Edges()
    {
        #region edges
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(50));
        Length sheet = Length.FromMillimeters(8);
        Length reach = Length.FromMillimeters(40);
        EdgeLay plate = EdgeLay.OfSheet(
            SheetEdge.AroundRectangle(Length.FromMeters(2), Length.FromMeters(1), sheet, reach, reach),
            stock,
            [Length.FromMeters(2), Length.FromMeters(1), Length.FromMeters(2), Length.FromMeters(1)]);
        EdgeLay window = EdgeLay.OfOpening(
            WindowOpening.Rectangular(Length.FromMillimeters(500), Length.FromMillimeters(300), sheet, reach, reach), stock);
        EdgeLay porthole = EdgeLay.OfOpening(WindowOpening.Circular(Length.FromMillimeters(600), sheet, reach, reach), stock);
        foreach (EdgeLay lay in new[] { plate, window, porthole })
        {
            Console.WriteLine($"{lay.Description}, stretch {lay.Stretch}");
            foreach (Strip strip in lay.Strips)
            {
                Console.WriteLine($"  {strip.Count} x {strip.Length.Millimeters:0.0} mm, {strip.Purpose}");
            }
        }
        #endregion
    }

    public static void StrapsAndWashers()
    {
        #region straps-and-washers
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(50));
        var strap = new PipeStrap(
            Length.FromMillimeters(168.3), Length.FromMillimeters(50), Length.FromMillimeters(6),
            Angle.FromDegrees(180), Length.FromMillimeters(120), StrapFaces.Both);
        var lay = new StrapLay(strap, stock, Length.FromMillimeters(10));
        Console.WriteLine($"{lay.Description}: {lay.TurnedIn.Millimeters:0.0} mm turned in, pucker {lay.Pucker}");
        var washers = new Washer(Length.FromMillimeters(40), Length.FromMillimeters(18), 90);
        foreach (Strip strip in lay.Strips.Concat(WasherStrips.For(washers, stock, Length.FromMeters(1))))
        {
            Console.WriteLine($"  {strip.Count} x {strip.Length.Millimeters:0.0} mm, {strip.Purpose}: cover {strip.Cover.Millimeters:0.0}, lap {strip.Lap.Millimeters:0.0}, trim {strip.Trim.Millimeters:0.0} mm");
        }
        #endregion
    }
}
