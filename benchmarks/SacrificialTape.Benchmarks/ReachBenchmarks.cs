using BenchmarkDotNet.Attributes;
using SacrificialTape.Galvanic;
using UnitsNet;

namespace SacrificialTape.Benchmarks;

/// <summary>A potential profile to 1e-9, its solver alone, and the closed form of linear metals. Aim: under 2 ms.</summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class ReachBenchmarks
{
    private static readonly TafelElectrode Zinc = Tafel("zinc", -1.03, 0.02, 0.04, 0.5);
    private static readonly TafelElectrode Steel = Tafel("steel", -0.60, 0.03, 0.06, 0.4);
    private static readonly LinearElectrode LinearZinc = new("zinc", Sce(-1.03), Quantities.PolarisationResistance.FromOhmSquareMeters(0.1));
    private static readonly LinearElectrode LinearSteel = new("steel", Sce(-0.60), Quantities.PolarisationResistance.FromOhmSquareMeters(1));

    /// <summary>From tap water to seawater under 100 um.</summary>
    [Params(0.05, 5.0)]
    public double SiemensPerMeter { get; set; }

    private ThinFilm Film => new(Length.FromMicrometers(100), ElectricConductivity.FromSiemensPerMeter(this.SiemensPerMeter));

    [Benchmark(Baseline = true)]
    public double Solver()
    {
        ThinFilm film = this.Film;
        return ThinFilmSolver.Solve(film.Spread, [(Zinc.Under(film), 25), (Steel.Under(film), 10)], 1e-9).Error;
    }

    [Benchmark]
    public ThinFilmProfile Profile() => new(
        this.Film, [new(Zinc, Length.FromMillimeters(25)), new(Steel, Length.FromMillimeters(10))]);

    [Benchmark]
    public LinearCouple ClosedForm() => new(this.Film, LinearZinc, Length.FromMillimeters(25), LinearSteel, Length.FromMillimeters(10));

    private static TafelElectrode Tafel(string name, double rest, double corrosion, double slope, double limit) => new(
        name,
        Sce(rest),
        ElectricCurrentDensity.FromAmperesPerSquareMeter(corrosion),
        ElectricPotential.FromVolts(slope),
        ElectricPotential.FromVolts(0.12),
        OxygenSupply.Limited(ElectricCurrentDensity.FromAmperesPerSquareMeter(limit)));

    private static ElectrodePotential Sce(double volts) => ElectrodePotential.FromVolts(volts, ReferenceElectrode.Calomel);
}
