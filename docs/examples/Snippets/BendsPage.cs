using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/bends.md quotes.</summary>
public static class BendsPage
{
    public static void Elbow()
    {
        #region elbow
        Bend elbow = Bend.LongRadius(PipeSize.FromNps("6"), Angle.FromDegrees(90));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(40), Length.FromMeters(50));
        var lay = new BendRingLay(elbow, stock, Length.FromMillimeters(10));
        Length widest = BendRingLay.WidestStrip(elbow, EdgeStrain.FromFraction(0.01), EdgeStrain.FromFraction(0.03));
        Console.WriteLine($"{elbow.Description}: {elbow.Area.SquareMeters:0.0000} m2, {elbow.OutsideArc.Millimeters:0.0} mm along the outside");
        Console.WriteLine(lay.Description);
        Console.WriteLine($"pucker {lay.Pucker}, stretch {lay.Stretch}; widest strip for 1 % and 3 %: {widest.Millimeters:0.0} mm");
        #endregion
    }
}
