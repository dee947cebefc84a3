using SacrificialTape.Quantities;
using SacrificialTape.Rules;
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

    public static void FoilBending()
    {
        #region foil-bending
        foreach (double thickness in new[] { 0.08, 0.1, 0.15, 0.3, 0.5 })
        {
            var foil = new Foil(Length.FromMillimeters(thickness));
            double wrap = RuleSet.Default[RuleIds.MinimumWrapDiameter].Limit!.Value.Number;
            double fold = RuleSet.Default[RuleIds.MinimumFoldRadius].Limit!.Value.Number;
            Console.WriteLine($"{thickness:0.00} mm: pipe from {thickness * wrap:0} mm ({new FoilBending(foil, Length.FromMillimeters(thickness * wrap / 2)).Strain}), edge radius from {thickness * fold:0.00} mm ({new FoilBending(foil, Length.FromMillimeters(thickness * fold)).Strain})");
        }
        #endregion
    }

    public static void Spiral()
    {
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        #region spiral
        var bend = new Bend(Length.FromMillimeters(168.3), Length.FromMillimeters(840), Angle.FromDegrees(90));
        var stock = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(50));
        var lay = new BendSpiralLay(bend, stock, Length.FromMillimeters(12));
        Console.WriteLine(lay.Description);
        Console.WriteLine($"advance {lay.OutsideAdvance.Millimeters:0.00} mm outside and on the straight pipe, {lay.InsideAdvance.Millimeters:0.00} mm inside");
        Console.WriteLine($"strip {lay.Strips[0].Length.Meters:0.000} m; pucker {lay.Pucker}, stretch {lay.Stretch}");
        #endregion
    }

    public static void Mitred()
    {
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        #region mitred
        var bend = new MitredBend(Length.FromMillimeters(168.3), Length.FromMillimeters(300), Angle.FromDegrees(90), joints: 3);
        var stock = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(50));
        var lay = new MitredBendLay(bend, stock, Length.FromMillimeters(10), weldLap: Length.FromMillimeters(15));
        Console.WriteLine(lay.Description);
        foreach (Strip strip in lay.Strips)
        {
            Console.WriteLine($"{strip.Count} x {strip.Length.Millimeters:0} mm, {strip.Trim.Millimeters:0} mm of each cut off");
        }

        Strip welds = WeldStrips.For(MitreWelds.Of(bend), stock, Length.FromMillimeters(20));
        Console.WriteLine($"weld strips: {welds.Count} x {welds.Length.Millimeters:0.0} mm");
        #endregion
    }
}
