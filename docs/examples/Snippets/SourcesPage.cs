using SacrificialTape.Provenance;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/sources.md quotes.</summary>
public static class SourcesPage
{
    public static void WhereFrom()
    {
        #region where-from
        var spiral = new SpiralGeometry(
            Length.FromMillimeters(114.3), Length.FromMillimeters(50), SpiralSetting.FromTrueLap(Length.FromMillimeters(10)));
        foreach (WorkingStep step in spiral.ShowWorkings().Steps)
        {
            Console.WriteLine($"{step.Formula.Id}: {step.Formula.Basis.Kind}");
        }
        #endregion
    }
}
