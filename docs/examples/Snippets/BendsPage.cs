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
}
