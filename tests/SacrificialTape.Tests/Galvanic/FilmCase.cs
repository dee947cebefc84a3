namespace SacrificialTape.Tests.Galvanic;

/// <summary>A film, zinc and steel beside one another: linear and Tafel electrodes from the same numbers.</summary>
public sealed record FilmCase(
    double FilmUm, double SiemensPerM, double ZincMm, double SteelMm, double ZincOhmM2, double SteelOhmM2, double ZincIcorr, double SteelIcorr, double LimitFactor)
{
    internal const double ZincV = -1.03;
    internal const double SteelV = -0.61;

    internal ThinFilm Film => new(Length.FromMicrometers(this.FilmUm), ElectricConductivity.FromSiemensPerMeter(this.SiemensPerM));

    internal LinearElectrode LinearZinc => new("zinc", Sce(ZincV), PolarisationResistance.FromOhmSquareMeters(this.ZincOhmM2));

    internal LinearElectrode LinearSteel => new("steel", Sce(SteelV), PolarisationResistance.FromOhmSquareMeters(this.SteelOhmM2));

    internal TafelElectrode Zinc => Tafel("zinc", ZincV, this.ZincIcorr, 0.04, 0.12, this.ZincIcorr * this.LimitFactor);

    internal TafelElectrode Steel => Tafel("steel", SteelV, this.SteelIcorr, 0.06, 0.12, this.SteelIcorr * this.LimitFactor);

    internal static ElectrodePotential Sce(double volts) => ElectrodePotential.FromVolts(volts, ReferenceElectrode.Calomel);

    internal static TafelElectrode Tafel(string name, double rest, double corrosion, double anodic, double cathodic, double limit) => new(
        name,
        Sce(rest),
        ElectricCurrentDensity.FromAmperesPerSquareMeter(corrosion),
        ElectricPotential.FromVolts(anodic),
        ElectricPotential.FromVolts(cathodic),
        double.IsPositiveInfinity(limit) ? OxygenSupply.Unlimited : OxygenSupply.Limited(ElectricCurrentDensity.FromAmperesPerSquareMeter(limit)));

    internal LinearCouple Couple(double? steelMm = null) =>
        new(this.Film, this.LinearZinc, Make.Mm(this.ZincMm), this.LinearSteel, Make.Mm(steelMm ?? this.SteelMm));

    internal ThinFilmProfile Linear() => new(this.Film, [new(this.LinearZinc, Make.Mm(this.ZincMm)), new(this.LinearSteel, Make.Mm(this.SteelMm))]);

    internal ThinFilmProfile Solve(double? steelMm = null, double error = 1e-9) => new(
        this.Film, [new(this.Zinc, Make.Mm(this.ZincMm)), new(this.Steel, Make.Mm(steelMm ?? this.SteelMm))], error);
}
