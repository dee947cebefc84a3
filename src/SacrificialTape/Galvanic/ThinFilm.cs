using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>A thin film of water on a surface: thickness and conductivity, which is all that carries current sideways.</summary>
/// <remarks>Thickness: more than 0, at most 1 mm (beyond it the surface is as good as immersed). Conductivity: more than 0.</remarks>
public sealed record ThinFilm
{
    internal const double ThickestUm = 1000;

    private readonly StoredNumber um;
    private readonly StoredNumber siemensPerM;

    /// <summary>Describes a film.</summary>
    /// <param name="thickness">Its thickness.</param>
    /// <param name="conductivity">Conductivity of its water.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ThinFilm(Length thickness, ElectricConductivity conductivity)
        : this(
            AcceptedRange.AboveUpTo(0, ThickestUm, "um").Check(UnitConversions.Micrometers(thickness), nameof(thickness)),
            AcceptedRange.Above(0, "S/m").Check(UnitConversions.SiemensPerMeter(conductivity), nameof(conductivity)))
    {
    }

    private ThinFilm(double um, double siemensPerM)
    {
        this.um = new StoredNumber(um);
        this.siemensPerM = new StoredNumber(siemensPerM);
    }

    /// <summary>Its thickness.</summary>
    public Length Thickness => Length.FromMicrometers(this.Um);

    /// <summary>Conductivity of its water.</summary>
    public ElectricConductivity Conductivity => ElectricConductivity.FromSiemensPerMeter(this.SiemensPerM);

    internal double Um => this.um.Bare;

    internal double SiemensPerM => this.siemensPerM.Bare;

    /// <summary>sigma d in S/m times um, which is A/m2 mm2 for each volt.</summary>
    internal double Spread => this.Um * this.SiemensPerM;

    /// <summary>The length over which a potential beside a metal of this resistance falls to 1/e: sqrt(sigma d R).</summary>
    /// <param name="resistance">Polarisation resistance of the metal.</param>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.SteelDecay))]
    public Length DecayLength(PolarisationResistance resistance) =>
        Length.FromMillimeters(ReachKernel.DecayMm(this.SiemensPerM, this.Um, resistance.OhmSquareMeters));

    /// <summary>The film as invariant text.</summary>
    public override string ToString() =>
        $"film {MeasureText.Write(this.Um, TradeUnit.Micrometer, 6)}, {MeasureText.Write(this.SiemensPerM, TradeUnit.SiemensPerMeter, 6)}";

    /// <summary>For sensitivities, which look a little past a bound too.</summary>
    internal ThinFilm Scaled(double thickness, double conductivity) => new(this.Um * thickness, this.SiemensPerM * conductivity);
}
