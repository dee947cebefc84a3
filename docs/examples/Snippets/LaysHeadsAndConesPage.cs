using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/lays-heads-and-cones.md quotes.</summary>
public static class LaysHeadsAndConesPage
{
    public static void Head()
    {
        #region head
        var head = HemisphericalHead.FromOutside(Length.FromMillimeters(1000), Length.FromMillimeters(40));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(50));
        var gores = new GoreLay(head, stock, Length.FromMillimeters(10));
        var whole = new MeridianStripLay(head, stock, Length.FromMillimeters(10));
        Console.WriteLine(gores.Description);
        Console.WriteLine($"at the rim {gores.Stations[0]}, at its end {gores.Stations[^1]}; pucker {gores.Pucker}");
        Console.WriteLine(whole.Description);
        Console.WriteLine(string.Join(", ", whole.Lengths));
        foreach (RevolvedLay lay in new RevolvedLay[] { gores, whole })
        {
            Console.WriteLine($"{lay.Strips.Sum(strip => strip.TotalLength.Meters):0.00} m of strip");
        }

        #endregion
    }

    public static void Cone()
    {
        #region cone
        var reducer = new ConcentricReducer(Length.FromMillimeters(323.9), Length.FromMillimeters(219.1), Length.FromMillimeters(203));
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(50));
        var rings = new LatitudeRingLay(reducer, stock, Length.FromMillimeters(10));
        var strips = new MeridianStripLay(reducer, stock, Length.FromMillimeters(10));
        EdgeStrain limit = EdgeStrain.FromFraction(0.01);
        Length widest = LatitudeRingLay.WidestStrip(reducer, Length.FromMillimeters(100), limit, limit)!.Value;
        Console.WriteLine(new ConeDevelopment(reducer));
        Console.WriteLine($"{rings.Description}; pucker {rings.Pucker}, stretch {rings.Stretch}");
        Console.WriteLine($"widest ring 100 mm up for 1 % and 1 %: {widest.Millimeters:0.0} mm");
        Console.WriteLine($"{strips.Description}; pucker {strips.Pucker}");
        #endregion
    }
}
