using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/reach.md quotes.</summary>
public static class ReachPage
{
    public static void Couple()
    {
        #region couple
        static ElectrodePotential Sce(double volts) => ElectrodePotential.FromVolts(volts, ReferenceElectrode.Calomel);
        var zinc = new LinearElectrode("zinc", Sce(-1.03), PolarisationResistance.FromOhmSquareMeters(0.1));
        var steel = new LinearElectrode("steel", Sce(-0.60), PolarisationResistance.FromOhmSquareMeters(1));
        foreach (double siemens in new[] { 5, 0.05 })
        {
            var film = new ThinFilm(Length.FromMicrometers(100), ElectricConductivity.FromSiemensPerMeter(siemens));
            var couple = new LinearCouple(film, zinc, Length.FromMillimeters(25), steel, Length.FromMillimeters(10));
            Console.WriteLine($"{film}: decay {couple.SteelDecayLength.Millimeters:0.00} mm on steel, {couple.ZincDecayLength.Millimeters:0.00} mm on zinc");
            Console.WriteLine($"  edge {couple.SteelEdge.Volts:0.0000} V, middle {couple.FarEnd.Volts:0.0000} V SCE, {couple.Current.MilliamperesPerMeter:0.000} mA/m, edge of zinc {couple.PeakOverMean:0.0} times its mean");
        }
        #endregion
    }

    public static void Profile()
    {
        #region profile
        static ElectrodePotential Sce(double volts) => ElectrodePotential.FromVolts(volts, ReferenceElectrode.Calomel);
        static ElectricCurrentDensity Density(double amperes) => ElectricCurrentDensity.FromAmperesPerSquareMeter(amperes);
        static ElectricPotential Decade(double volts) => ElectricPotential.FromVolts(volts);
        var zinc = new TafelElectrode("zinc", Sce(-1.03), Density(0.02), Decade(0.04), Decade(0.12), OxygenSupply.Limited(Density(0.5)));
        var steel = new TafelElectrode("steel", Sce(-0.60), Density(0.03), Decade(0.06), Decade(0.12), OxygenSupply.ThroughFilm);
        var film = new ThinFilm(WaterFilm.Of(Wetting.Rain), SaltSolution.Conductivity(Salt.SodiumChloride, 1));
        var profile = new ThinFilmProfile(
            film, [new(zinc, Length.FromMillimeters(25)), new(steel, Length.FromMillimeters(5))]);
        Console.WriteLine($"zinc gives {profile.SegmentCurrents[0].MilliamperesPerMeter:0.0000} mA/m, steel {profile.SegmentCurrents[1].MilliamperesPerMeter:0.0000}");
        Console.WriteLine($"steel between {profile.LowestOn(1).Volts:0.0000} and {profile.HighestOn(1).Volts:0.0000} V SCE; edge of zinc {profile.PeakOverMean(0):0.00} times its mean");
        Console.WriteLine(profile.EstimatedError <= 1e-9 ? "settled to 1e-9 of the difference of the rest potentials" : "not settled");
        #endregion
    }

    public static void WidestGap()
    {
        #region widest-gap
        static ElectrodePotential Sce(double volts) => ElectrodePotential.FromVolts(volts, ReferenceElectrode.Calomel);
        static ElectricCurrentDensity Density(double amperes) => ElectricCurrentDensity.FromAmperesPerSquareMeter(amperes);
        static ElectricPotential Decade(double volts) => ElectricPotential.FromVolts(volts);
        var zinc = new TafelElectrode("zinc", Sce(-1.03), Density(0.02), Decade(0.04), Decade(0.12), OxygenSupply.Limited(Density(0.5)));
        var steel = new TafelElectrode("steel", Sce(-0.60), Density(0.03), Decade(0.06), Decade(0.12), OxygenSupply.ThroughFilm);
        foreach (Electrolyte water in new[] { Electrolyte.Rain, Electrolyte.DrinkingWater, Electrolyte.Seawater })
        {
            var film = new ThinFilm(WaterFilm.Of(Wetting.Rain), water.Highest);
            var gap = new ProtectedGap(film, zinc, Length.FromMillimeters(25), steel, ProtectionCriterion.HundredMillivoltShift);
            GapSensitivity follows = gap.Sensitivity();
            Console.WriteLine($"{water.Name}: {gap.Widest.Millimeters:0.00} mm; 1 % more conductivity {follows.ToConductivity:0.00} %, 1 % more film {follows.ToThickness:0.00} %");
        }

        var rain = new ThinFilm(WaterFilm.Of(Wetting.Rain), Electrolyte.Rain.Highest);
        var found = new ProtectedGap(rain, zinc, Length.FromMillimeters(25), steel, ProtectionCriterion.HundredMillivoltShift);
        foreach (Finding finding in found.Judge(Length.FromMillimeters(10), RuleSet.Default, "line 7, between two rings"))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }
}
