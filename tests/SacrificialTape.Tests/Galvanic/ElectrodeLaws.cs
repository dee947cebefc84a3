using FsCheck.Xunit;

namespace SacrificialTape.Tests.Galvanic;

[Properties(Arbitrary = [typeof(FilmCases)], MaxTest = 200)]
public sealed class ElectrodeLaws
{
    [Property]
    public void No_current_flows_at_rest_and_it_grows_with_the_potential(FilmCase given)
    {
        foreach (Electrode electrode in new Electrode[] { given.Zinc, given.Steel, given.LinearZinc, given.LinearSteel })
        {
            ElectrodeTerms terms = electrode.Under(given.Film);
            Assert.InRange(terms.Current(terms.Rest), -1e-15, 1e-15);
            double before = double.NegativeInfinity;
            for (double e = -1.5; e < -0.2; e += 0.01)
            {
                terms.Evaluate(e, out double current, out double slope);
                Assert.True(current >= before && slope >= 0 && double.IsFinite(current) && double.IsFinite(slope));
                double difference = (terms.Current(e + 1e-6) - terms.Current(e - 1e-6)) / 2e-6;
                Near.Equal(difference, slope, 1e-5, "slope", 1e-7 * (1 + Math.Abs(current)));
                before = current;
            }
        }
    }

    [Property]
    public void Far_below_rest_the_current_is_what_oxygen_allows(FilmCase given)
    {
        double limit = given.SteelIcorr * given.LimitFactor;
        Near.Equal(-limit, given.Steel.CurrentAt(given.Film, FilmCase.Sce(-2.5)).AmperesPerSquareMeter, 1e-9);
        TafelElectrode free = FilmCase.Tafel("steel", FilmCase.SteelV, given.SteelIcorr, 0.06, 0.12, double.PositiveInfinity);
        TafelElectrode ample = FilmCase.Tafel("steel", FilmCase.SteelV, given.SteelIcorr, 0.06, 0.12, given.SteelIcorr * 1e9);
        Near.Equal(-given.SteelIcorr * 10, free.CurrentAt(given.Film, FilmCase.Sce(FilmCase.SteelV - 0.12)).AmperesPerSquareMeter, 0.01);
        Near.Equal(free.CurrentAt(given.Film, FilmCase.Sce(-0.8)).AmperesPerSquareMeter, ample.CurrentAt(given.Film, FilmCase.Sce(-0.8)).AmperesPerSquareMeter, 1e-6);
    }

    [Property]
    public void Activation_and_supply_add_as_resistances(FilmCase given)
    {
        // 1/i = 1/i_L + 1/i_act, with i_act from the Tafel law through the corrosion current at rest.
        double limit = given.SteelIcorr * given.LimitFactor;
        double exchange = 1 / ((1 / given.SteelIcorr) - (1 / limit));
        foreach (double over in new[] { -0.4, -0.2, -0.05, 0.02 })
        {
            double act = exchange * Math.Pow(10, -over / 0.12);
            double expected = (given.SteelIcorr * Math.Pow(10, over / 0.06)) - (1 / ((1 / limit) + (1 / act)));
            Near.Equal(expected, given.Steel.CurrentAt(given.Film, FilmCase.Sce(FilmCase.SteelV + over)).AmperesPerSquareMeter, 1e-9);
        }
    }

    [Property]
    public void The_resistance_at_rest_is_the_slope_there(FilmCase given)
    {
        foreach (TafelElectrode electrode in new[] { given.Zinc, given.Steel })
        {
            ElectrodeTerms terms = electrode.Under(given.Film);
            Near.Equal(1 / terms.Slope(terms.Rest), electrode.ResistanceAtRest(given.Film).OhmSquareMeters, 1e-12);
        }
    }

    [Fact]
    public void Potentials_compare_by_meaning()
    {
        ElectrodePotential soil = ElectrodePotential.FromVolts(-0.85, ReferenceElectrode.CopperSulfate);
        Assert.Equal(soil, ElectrodePotential.FromVolts(-0.78, ReferenceElectrode.SilverChlorideSeawater));
        Assert.Equal(soil, ElectrodePotential.FromVolts(-0.776, ReferenceElectrode.Calomel));
        Assert.Equal(soil.GetHashCode(), ElectrodePotential.FromVolts(-0.776, ReferenceElectrode.Calomel).GetHashCode());
        Assert.NotEqual(soil, ElectrodePotential.FromVolts(-0.85, ReferenceElectrode.Calomel));
        Assert.Equal("-0.85 V CSE", soil.ToString());
        Near.Equal(0.25, soil.Above(ElectrodePotential.FromVolts(-1.10, ReferenceElectrode.CopperSulfate)).Volts, 1e-12);
        Errors.Refused(static () => ElectrodePotential.FromVolts(-850, ReferenceElectrode.CopperSulfate), "volts", "-850 V", "at least -3 and at most 3 V");
        Errors.Refused(static () => ElectrodePotential.FromVolts(-0.85, (ReferenceElectrode)9), "reference");
    }
}
