using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/which-type.md quotes.</summary>
public static class WhichTypePage
{
    public static void Sizes()
    {
        #region sizes
        var pipe = new StraightPipe(PipeSize.Parse("DN 65 ISO"), Length.FromMeters(6));
        Console.WriteLine($"{pipe.Description}; {PipeSize.Parse("DN 65 ISO").Basis}");
        try
        {
            _ = PipeSize.Parse("DN 65");
        }
        catch (ArgumentException fault)
        {
            Console.WriteLine(fault.Message);
        }
        #endregion
    }
}
