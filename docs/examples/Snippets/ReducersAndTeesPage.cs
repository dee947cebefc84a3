using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/reducers-and-tees.md quotes.</summary>
public static class ReducersAndTeesPage
{
    public static void TeeLaid()
    {
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        #region tee-laid
        var tee = new Tee(PipeSize.FromNps("6"), PipeSize.FromNps("6"));
        var stock = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(50));
        var lay = new TeeLay(tee, stock, Length.FromMillimeters(10), saddleLap: Length.FromMillimeters(15));
        Console.WriteLine(lay.Description);
        Console.WriteLine($"laps {lay.RunLap.Millimeters:0.0} mm on the run, {lay.BranchLap.Millimeters:0.0} mm on the branch; flap {lay.Flap.Millimeters:0.0} mm");
        foreach (Strip strip in lay.Strips)
        {
            Console.WriteLine($"{strip.Count} x {strip.Length.Millimeters:0} mm, {strip.Trim.Millimeters:0} mm of each cut off");
        }

        #endregion
    }

    public static void Eccentric()
    {
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        #region eccentric
        var reducer = new EccentricReducer(Length.FromMillimeters(168.3), Length.FromMillimeters(114.3), Length.FromMillimeters(140));
        var stock = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(50));
        var lay = new EccentricReducerLay(reducer, stock, Length.FromMillimeters(10));
        Console.WriteLine(lay.Description);
        foreach (Strip strip in lay.Strips)
        {
            Console.WriteLine($"{strip.Count} x {strip.Length.Millimeters:0.0} mm");
        }

        #endregion
    }

    public static void Welds()
    {
        #region welds
        var run = Length.FromMillimeters(168.3);
        WeldSeam[] seams =
        [
            new SaddleWelds(run, Length.FromMillimeters(168.3), count: 1),
            new SaddleWelds(run, Length.FromMillimeters(114.3), count: 1),
            new MitreWelds(run, Angle.FromDegrees(90), count: 1),
            new GirthWelds(run, count: 2),
        ];
        foreach (WeldSeam seam in seams)
        {
            Console.WriteLine($"{seam.Count} of {seam.SeamLength.Millimeters:0.0} mm {seam.Place}");
        }

        #endregion
    }
}
