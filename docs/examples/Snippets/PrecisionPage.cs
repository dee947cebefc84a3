using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/precision.md quotes.</summary>
public static class PrecisionPage
{
    public static void Equality()
    {
        #region equality
        var inMillimetres = new StraightPipe(Length.FromMillimeters(60.3), Length.FromMillimeters(12000));
        var inMetres = new StraightPipe(Length.FromMeters(0.0603), Length.FromMeters(12));
        Console.WriteLine(inMillimetres == inMetres);
        Console.WriteLine(new Measure(0.1 + 0.2, TradeUnit.Millimeter) == new Measure(300, TradeUnit.Micrometer));
        #endregion
    }

    public static void Text()
    {
        #region text
        Console.WriteLine(Measure.Parse("85 micron") == new Measure(0.085, TradeUnit.Millimeter));
        try
        {
            _ = Measure.Parse("1,5 mm");
        }
        catch (FormatException fault)
        {
            Console.WriteLine(fault.Message);
        }
        #endregion
    }

    public static void Unset()
    {
        #region unset
        Lifetime life = default;
        Console.WriteLine(life);
        try
        {
            Console.WriteLine(life.IsUnlimited);
        }
        catch (InvalidOperationException fault)
        {
            Console.WriteLine(fault.Message);
        }
        #endregion
    }
}
