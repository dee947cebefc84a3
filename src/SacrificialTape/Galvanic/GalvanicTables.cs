using SacrificialTape.Exposure;

namespace SacrificialTape.Galvanic;

/// <summary>Numbers of this room; their marks stand with the types that hand them out.</summary>
internal static class GalvanicTables
{
    /// <summary>C/mol (CODATA, recalled).</summary>
    internal const double FaradayCoulombPerMole = 96485.332;

    /// <summary>g/mol (IUPAC, recalled).</summary>
    internal const double ZincGramPerMole = 65.38;

    /// <summary>g/mol (IUPAC, recalled).</summary>
    internal const double IronGramPerMole = 55.845;

    internal const double ZincElectrons = 2;

    /// <summary>Carbon steel, kg/m3 (ASTM G1, recalled).</summary>
    internal const double SteelKilogramsPerCubicMeter = CorrosivityTable.SteelKilogramsPerCubicMeter;

    /// <summary>Zinc's potential behind the driving-voltage factor, V CSE.</summary>
    internal const double ZincOpenCircuit = -1.10;

    /// <summary>Driving voltage at -0.85 V CSE, to which the factor is 1.</summary>
    internal const double UsualDrivingVoltage = 0.25;

    internal const double OxygenElectrons = 4;

    /// <summary>Oxygen in water at 25 degC, m2/s (recalled).</summary>
    internal const double OxygenDiffusivity = 2e-9;

    /// <summary>Oxygen in water under air at 25 degC, mol/m3 (recalled).</summary>
    internal const double OxygenConcentration = 0.26;

    internal static (double GramPerMole, double KilogramsPerCubicMeter) Metal(Metal metal) => metal switch
    {
        Exposure.Metal.Zinc => (ZincGramPerMole, Tapes.Zinc.KilogramsPerCubicMeter),
        Exposure.Metal.CarbonSteel => (IronGramPerMole, SteelKilogramsPerCubicMeter),
        _ => throw new ArgumentOutOfRangeException(nameof(metal), metal, "Not a metal known here."),
    };

    /// <summary>What is added to a potential against copper sulfate: from -0.85 CSE = -0.78 SSC = -0.776 SCE.</summary>
    internal static double OffsetFromCopperSulfate(ReferenceElectrode reference) => reference switch
    {
        ReferenceElectrode.CopperSulfate => 0,
        ReferenceElectrode.SilverChlorideSeawater => 0.07,
        ReferenceElectrode.Calomel => 0.074,
        _ => throw new ArgumentOutOfRangeException(nameof(reference), reference, "Not a reference electrode known here."),
    };

    /// <summary>mA.ohm.cm.</summary>
    internal static double SoilAnodeConstant(SoilAnodeKind kind) => kind switch
    {
        SoilAnodeKind.MagnesiumWellCoated => 120_000,
        SoilAnodeKind.ZincCoated => 50_000,
        _ => 40_000,
    };

    internal static string ShortName(ReferenceElectrode reference) => reference switch
    {
        ReferenceElectrode.CopperSulfate => "CSE",
        ReferenceElectrode.SilverChlorideSeawater => "SSC",
        _ => "SCE",
    };
}
