using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>The library's calculations that verification cases can call. A closed list: nothing is looked up by reflection.</summary>
public static class CaseCalculations
{
    /// <summary>All of them.</summary>
    public static ValueList<CaseCalculation> All => LibraryCalculations.All;
}
