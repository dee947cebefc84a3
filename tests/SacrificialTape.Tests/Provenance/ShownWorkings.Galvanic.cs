using FsCheck.Xunit;
using SacrificialTape.Tests.Galvanic;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Zinc beside bare steel.</content>
public sealed partial class ShownWorkings
{
    [Property]
    public void Of_zinc_beside_bare_steel(LossCase given)
    {
        CurrentDemand demand = CurrentDemand.FromMeasurement(
            ElectricCurrentDensity.FromAmperesPerSquareMeter(0.01), ElectricCurrentDensity.FromAmperesPerSquareMeter(0.03), "made up");
        var exposure = ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(Math.Max(0.1, given.Rate)), "made up");
        ZincFeed[] feeds =
        [
            ZincFeed.BesideMargin(Mm(5), Mm(20)), ZincFeed.BesideMargin(Mm(5), Mm(20), Mm(8)),
            ZincFeed.RoundHoliday(Mm(20), Mm(8)), ZincFeed.RoundHolidayInRing(Mm(20), Mm(8)),
        ];
        foreach (ZincFeed feed in feeds)
        {
            Ends(Checked(feed), feed.BarePerZinc.Ratio);
            foreach (ILossLaw law in new ILossLaw[] { LinearLoss.Law, new PowerLawLoss(TimeExponent.FromValue(given.Exponent)) })
            {
                var life = new HolidayLife(
                    new Foil(Mm(0.1)), feed, demand, new OwnCorrosionAndDemand(TheoreticalCapacity.Zinc, exposure, law), Utilisation.FromFraction(0.8));
                IReadOnlyDictionary<string, double> shown = Checked(life);
                Near.Equal(life.HighestDemandRate.MicrometersPerYear, shown["g"], 1e-12);

                // The law takes the share left to own corrosion and finds the life again.
                Near.Equal(life.Earliest.Duration.Years365, shown["t"], 1e-8);
            }

            var practical = new HolidayLife(
                new Foil(Mm(0.1)), feed, demand, new DemandAtPracticalCapacity(PracticalCapacity.DnvSediment), Utilisation.FromFraction(0.8));
            Ends(Checked(practical), practical.Earliest.Duration.Years365);
        }
    }

    [Fact]
    public static void Of_charge_and_demand()
    {
        Ends(Checked(TheoreticalCapacity.Zinc), TheoreticalCapacity.Zinc.Consumption.KilogramsPerAmpereYear);
        var drive = new DrivingVoltage(FilmCase.Sce(-0.7));
        Ends(Checked(drive), drive.Factor);
        var oxygen = new OxygenLimit(Length.FromMicrometers(80));
        Ends(Checked(oxygen), oxygen.Limit.AmperesPerSquareMeter);
        foreach (double years in new[] { 5.0, 40 })
        {
            var breakdown = new CoatingBreakdown(BreakdownConstants.CategoryTwoShallow, Duration.FromYears365(years));
            IReadOnlyDictionary<string, double> shown = Checked(breakdown);
            Near.Equal(breakdown.Mean, shown["f_mean"], 0);
            Near.Equal(breakdown.Final, shown["f_end"], 0);
        }

        var flush = new FlushAnode(Area.FromSquareMeters(0.3), ElectricResistivity.FromOhmMeters(0.4), ElectricPotential.FromVolts(0.2));
        Ends(Checked(flush), flush.Current.Amperes);
        var buried = new SoilAnode(SoilAnodeKind.ZincBare, 0.71, 0.8, ElectricResistivity.FromOhmMeters(30));
        Ends(Checked(buried), buried.Output.Amperes);
        Workings number = buried.ShowNumber(ElectricCurrent.FromAmperes(0.7));
        Assert.All(number.Steps, static step => Assert.True(Recomputation.Agrees(step, Recomputation.Of(step)), step.ToString()));
        Assert.Equal(buried.Number(ElectricCurrent.FromAmperes(0.7)), number.Steps[^1].Result.Number);
        var current = ElectricCurrent.FromAmperes(0.7);
        var mass = new AnodeMass(PracticalCapacity.NinetyPercent, Utilisation.FromFraction(0.8), current, Duration.FromYears365(12));
        Ends(Checked(mass), mass.Mass.Kilograms);
        var life = new AnodeLife(mass.Mass, PracticalCapacity.NinetyPercent, Utilisation.FromFraction(0.8), current);
        Ends(Checked(life), life.Life.Duration.Years365);
        AnodeConsumption consumption = TheoreticalCapacity.Zinc.Consumption;
        var massByConsumption = AnodeMass.ByConsumption(consumption, CurrentEfficiency.FromFraction(0.9), Utilisation.FromFraction(0.8), current, Duration.FromYears365(12));
        Ends(Checked(massByConsumption), massByConsumption.Mass.Kilograms);
        var lifeByConsumption = AnodeLife.ByConsumption(mass.Mass, consumption, CurrentEfficiency.FromFraction(0.9), Utilisation.FromFraction(0.8), current);
        Ends(Checked(lifeByConsumption), lifeByConsumption.Life.Duration.Years365);
    }

    [Fact]
    public static void Of_reach()
    {
        var given = new FilmCase(100, 0.5, 25, 10, 0.1, 1, 0.02, 0.03, 8);
        LinearCouple couple = new(given.Film, given.LinearZinc, Mm(25), given.LinearSteel, Mm(10), Mm(1), ElectricResistivity.FromOhmMeters(0.5));
        IReadOnlyDictionary<string, double> shown = Checked(couple);
        Near.Equal(couple.SteelDecayLength.Millimeters, shown["lambda_s"], 1e-12);
        Near.Equal(couple.ZincDecayLength.Millimeters, shown["lambda_z"], 1e-12);
        Near.Equal(couple.SteelEdge.Volts, shown["E_j"], 1e-12);
        Near.Equal(couple.ZincEdge.Volts, shown["E_jz"], 1e-12);
        Near.Equal(couple.FarEnd.Volts, shown["E_far"], 1e-12);
        Near.Equal(couple.Current.MilliamperesPerMeter, shown["I_e"], 1e-12);
        Near.Equal(couple.PeakOverMean, shown["k_p"], 1e-12);
        Ends(shown, couple.PeakZincCurrent.AmperesPerSquareMeter);
        var reach = new LinearReach(given.Film, given.LinearSteel, FilmCase.Sce(-0.95), ProtectionCriterion.SoilOrWater);
        IReadOnlyDictionary<string, double> far = Checked(reach);
        Near.Equal(reach.DecayLength.Millimeters, far["lambda_s"], 1e-12);
        Near.Equal(reach.OnEndlessSteel.Millimeters, far["x_p"], 1e-12);
        Near.Equal(reach.ToMiddleOfGap.Millimeters, far["c_p"], 1e-12);
        var oxygen = new OxygenReach(given.Film, ElectricPotential.FromVolts(0.25), ElectricCurrentDensity.FromAmperesPerSquareMeter(0.4));
        Ends(Checked(oxygen), oxygen.Reach.Millimeters);
        _ = Checked(given.Solve());
        foreach ((Electrode zinc, Electrode steel) in new (Electrode, Electrode)[] { (given.LinearZinc, given.LinearSteel), (given.Zinc, given.Steel) })
        {
            var gap = new ProtectedGap(given.Film, zinc, Mm(25), steel, ProtectionCriterion.SoilOrWater);
            Ends(Checked(gap), gap.Widest.Millimeters);
            GapSensitivity sensitivity = gap.Sensitivity();
            IReadOnlyDictionary<string, double> follows = Checked(sensitivity);
            Near.Equal(sensitivity.ToThickness, follows["e_d"], 1e-12);
            Near.Equal(sensitivity.ToConductivity, follows["e_sigma"], 1e-12);
        }
    }
}
