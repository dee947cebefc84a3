using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Galvanic;

[Properties(Arbitrary = [typeof(FilmCases)], MaxTest = 100)]
public sealed class ThinFilmLaws
{
    private const double Rests = FilmCase.SteelV - FilmCase.ZincV;

    [Property]
    public void The_numerical_solution_is_the_closed_form_for_linear_metals(FilmCase given)
    {
        ThinFilmProfile profile = given.Linear();
        LinearCouple couple = given.Couple();
        Assert.True(profile.EstimatedError <= 1e-9);
        foreach (FilmPoint point in profile.Points)
        {
            double along = point.Distance.Millimeters - given.ZincMm;
            double expected = (point.Segment == 0
                ? couple.OnZinc(Mm(Math.Max(0, -along)))
                : couple.OnSteel(Mm(Math.Clamp(along, 0, given.SteelMm)))).Volts;
            Assert.InRange(point.Potential.Volts - expected, -1e-9 * Rests, 1e-9 * Rests);
        }

        Near.Equal(couple.Current.MilliamperesPerMeter, profile.SegmentCurrents[0].MilliamperesPerMeter, 1e-7, "current");
        Near.Equal(couple.PeakOverMean, profile.PeakOverMean(0), 1e-6, "edge over mean");
        Near.Equal(couple.FarEnd.Volts, profile.HighestOn(1).Volts, 1e-9);
        Near.Equal(couple.SteelEdge.Volts, profile.LowestOn(1).Volts, 1e-9);
    }

    [Property(MaxTest = 40)]
    public void What_zinc_gives_is_what_steel_takes(FilmCase given)
    {
        ThinFilmProfile profile = given.Solve();
        double zinc = profile.SegmentCurrents[0].MilliamperesPerMeter;
        Assert.True(zinc > 0);

        // Of the current that each side would exchange alone, since the net one can be a small difference.
        double whole = Math.Max(zinc, given.ZincIcorr * given.ZincMm);
        Near.Equal(zinc, -profile.SegmentCurrents[1].MilliamperesPerMeter, 1e-8, "current", 1e-9 * whole);
    }

    [Property(MaxTest = 40)]
    public void Potentials_lie_between_the_rest_potentials_and_rise_from_zinc_to_steel(FilmCase given)
    {
        ThinFilmProfile profile = given.Solve();
        double before = FilmCase.ZincV - 1e-9;
        foreach (FilmPoint point in profile.Points)
        {
            Assert.True(point.Potential.Volts >= before - 1e-9, $"{point} after {before}");
            before = point.Potential.Volts;
        }

        Assert.True(before <= FilmCase.SteelV + 1e-9);
    }

    [Property(MaxTest = 40)]
    public void A_wider_gap_is_never_better_protected(FilmCase given)
    {
        double wider = given.SteelMm * 1.3;
        Assert.True(given.Solve(wider).HighestOn(1).Volts >= given.Solve().HighestOn(1).Volts - 2e-9);
        Assert.True(given.Couple(wider).FarEnd.Volts >= given.Couple().FarEnd.Volts - 1e-12);
    }

    [Property(MaxTest = 30)]
    public void A_symmetric_problem_has_a_symmetric_solution(FilmCase given)
    {
        ThinFilmProfile half = given.Solve();
        var whole = new ThinFilmProfile(
            given.Film,
            [new(given.Zinc, Mm(given.ZincMm)), new(given.Steel, Mm(2 * given.SteelMm)), new(given.Zinc, Mm(given.ZincMm))]);
        Near.Equal(half.HighestOn(1).Volts, whole.HighestOn(1).Volts, 1e-8, "middle");
        FilmPoint[] points = [.. whole.Points];
        for (int i = 0; i < points.Length / 2; i++)
        {
            Assert.InRange(points[i].Potential.Volts - points[^(i + 1)].Potential.Volts, -1e-10, 1e-10);
        }
    }

    [Property(MaxTest = 30)]
    public void Left_and_right_may_be_exchanged(FilmCase given)
    {
        ThinFilmProfile one = given.Solve();
        var other = new ThinFilmProfile(given.Film, [new(given.Steel, Mm(given.SteelMm)), new(given.Zinc, Mm(given.ZincMm))]);
        Near.Equal(one.HighestOn(1).Volts, other.HighestOn(0).Volts, 1e-9);
        Near.Equal(one.LowestOn(0).Volts, other.LowestOn(1).Volts, 1e-9);
    }

    [Property(MaxTest = 30)]
    public void Only_the_film_as_a_conductor_counts_and_lengths_go_with_its_root(FilmCase given)
    {
        // Twice the lengths, four times sigma d: the same potentials.
        double far = given.Solve().HighestOn(1).Volts;
        FilmCase large = given with { SiemensPerM = 4 * given.SiemensPerM, ZincMm = 2 * given.ZincMm, SteelMm = 2 * given.SteelMm };
        Near.Equal(far, large.Solve().HighestOn(1).Volts, 3e-9);
        FilmCase swapped = given with { SiemensPerM = given.SiemensPerM * 2, FilmUm = given.FilmUm / 2 };
        Near.Equal(far, swapped.Solve().HighestOn(1).Volts, 1e-9);
    }

    [Property(MaxTest = 20)]
    public void Units_and_reference_electrodes_do_not_matter(FilmCase given)
    {
        ElectrodePotential Other(double sce) => FilmCase.Sce(sce).Against(ReferenceElectrode.CopperSulfate);
        var zinc = new TafelElectrode("zinc", Other(FilmCase.ZincV), given.Zinc.CorrosionCurrent, ElectricPotential.FromMillivolts(40), ElectricPotential.FromMillivolts(120), given.Zinc.Supply);
        var steel = new TafelElectrode("steel", Other(FilmCase.SteelV), given.Steel.CorrosionCurrent, ElectricPotential.FromMillivolts(60), ElectricPotential.FromMillivolts(120), given.Steel.Supply);
        var film = new ThinFilm(Length.FromMillimeters(given.FilmUm / 1000), ElectricConductivity.FromMicrosiemensPerCentimeter(given.SiemensPerM * 1e4));
        var profile = new ThinFilmProfile(film, [new(zinc, Length.FromMeters(given.ZincMm / 1000)), new(steel, Length.FromInches(given.SteelMm / 25.4))]);
        Assert.Equal(ReferenceElectrode.CopperSulfate, profile.Points[0].Potential.Reference);
        Near.Equal(given.Solve().HighestOn(1).Volts, profile.HighestOn(1).Against(ReferenceElectrode.Calomel).Volts, 2e-9);
    }

    // Widths of a few decay lengths at most: a shot through more of them runs away before it arrives.
    [Theory]
    [InlineData(500, 25, 10, 0.4)]
    [InlineData(500, 10, 20, 0.1)]
    [InlineData(50, 8, 10, 2)]
    [InlineData(5, 3, 5, 0.1)]
    [InlineData(2000, 30, 60, double.PositiveInfinity)]
    public void Shooting_finds_the_same(double spread, double zincMm, double steelMm, double limit)
    {
        ElectrodeTerms zinc = ElectrodeTerms.Tafel(-1.03, 0.02, 0.04, 0.12, 0.5);
        ElectrodeTerms steel = ElectrodeTerms.Tafel(-0.60, 0.03, 0.06, 0.12, limit);
        ThinFilmAnswer answer = ThinFilmSolver.Solve(spread, [(zinc, zincMm), (steel, steelMm)], 1e-9);
        (double far, double edge, double end) = Shooting.Solve(spread, zinc.Current, zincMm, steel.Current, steelMm, -1.03, -0.60);
        Assert.InRange(answer.Potential[^1] - far, -1e-9, 1e-9);
        Assert.InRange(answer.Potential[ThinFilmSolver.Coarsest] - edge, -1e-9, 1e-9);

        // At the end of the zinc the shot has multiplied its own rounding.
        Assert.InRange(answer.Potential[0] - end, -1e-7, 1e-7);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(300)]
    public void The_estimated_error_covers_the_true_one(double spread)
    {
        ElectrodeTerms zinc = ElectrodeTerms.Tafel(-1.03, 0.02, 0.04, 0.12, 0.5);
        ElectrodeTerms steel = ElectrodeTerms.Tafel(-0.60, 0.03, 0.06, 0.12, 0.3);
        ThinFilmAnswer fine = ThinFilmSolver.Solve(spread, [(zinc, 25), (steel, 12)], 1e-11);
        foreach (double asked in new[] { 1e-4, 1e-6, 1e-8, 1e-9 })
        {
            ThinFilmAnswer coarse = ThinFilmSolver.Solve(spread, [(zinc, 25), (steel, 12)], asked);
            Assert.True(coarse.Error <= asked);
            double worst = coarse.Potential.Zip(fine.Potential).Max(static pair => Math.Abs(pair.First - pair.Second));
            Assert.True(worst <= (coarse.Error * 0.43) + 1e-11, $"{worst} against {coarse.Error}");
        }
    }

    [Property(MaxTest = 30)]
    public void Small_differences_of_rest_potential_follow_the_linear_form(FilmCase given)
    {
        const double Apart = 1e-5;
        TafelElectrode zinc = FilmCase.Tafel("zinc", -0.7, given.ZincIcorr, 0.04, 0.12, given.ZincIcorr * given.LimitFactor);
        TafelElectrode steel = FilmCase.Tafel("steel", -0.7 + Apart, given.SteelIcorr, 0.06, 0.12, given.SteelIcorr * given.LimitFactor);
        var profile = new ThinFilmProfile(given.Film, [new(zinc, Mm(given.ZincMm)), new(steel, Mm(given.SteelMm))], 1e-6);
        var couple = new LinearCouple(
            given.Film,
            new LinearElectrode("zinc", zinc.RestPotential!.Value, zinc.ResistanceAtRest(given.Film)),
            Mm(given.ZincMm),
            new LinearElectrode("steel", steel.RestPotential!.Value, steel.ResistanceAtRest(given.Film)),
            Mm(given.SteelMm));
        Assert.InRange(profile.HighestOn(1).Volts - couple.FarEnd.Volts, -1e-3 * Apart, 1e-3 * Apart);
        Assert.InRange(profile.LowestOn(1).Volts - couple.SteelEdge.Volts, -1e-3 * Apart, 1e-3 * Apart);
    }

    [Fact]
    public void Where_oxygen_limits_the_steel_the_potential_is_a_parabola()
    {
        // Zinc too strong to move, steel on its plateau over the whole half gap: U = i_L c^2/(2 sigma d).
        var film = new ThinFilm(Length.FromMicrometers(100), ElectricConductivity.FromSiemensPerMeter(5));
        LinearElectrode zinc = new("zinc", FilmCase.Sce(-1.03), PolarisationResistance.FromOhmSquareMeters(1e-6));
        TafelElectrode steel = FilmCase.Tafel("steel", -0.5, 1e-5, 0.06, 0.05, 0.1);
        var profile = new ThinFilmProfile(film, [new(zinc, Mm(50)), new(steel, Mm(20))]);
        double lost = profile.HighestOn(1).Above(profile.LowestOn(1)).Volts;
        Near.Equal(0.1 * 20 * 20 / (2 * 500), lost, 1e-5);
        var reach = new OxygenReach(film, ElectricPotential.FromVolts(lost), ElectricCurrentDensity.FromAmperesPerSquareMeter(0.1));
        Near.Equal(20, reach.Reach.Millimeters, 1e-5);
    }

    [Property(MaxTest = 30)]
    public void An_inert_gap_is_a_resistance_in_series(FilmCase given)
    {
        double gap = given.SteelMm / 3;
        var closed = new LinearCouple(given.Film, given.LinearZinc, Mm(given.ZincMm), given.LinearSteel, Mm(given.SteelMm), Mm(gap));
        var profile = new ThinFilmProfile(
            given.Film, [new(given.LinearZinc, Mm(given.ZincMm)), new(new InertSurface("paint"), Mm(gap)), new(given.LinearSteel, Mm(given.SteelMm))]);
        Near.Equal(closed.FarEnd.Volts, profile.HighestOn(2).Volts, 1e-9);
        Near.Equal(closed.ZincEdge.Volts, profile.HighestOn(0).Volts, 1e-9);
        Near.Equal(closed.SteelEdge.Volts, profile.LowestOn(2).Volts, 1e-9);
        Assert.Equal(0, profile.SegmentCurrents[1].MilliamperesPerMeter);

        // The same resistance as a contact of the metals: the current is the same.
        var contact = ElectricResistivity.FromOhmMeters(1000 * gap / (given.SiemensPerM * given.FilmUm));
        var joined = new LinearCouple(given.Film, given.LinearZinc, Mm(given.ZincMm), given.LinearSteel, Mm(given.SteelMm), contact: contact);
        Near.Equal(closed.Current.MilliamperesPerMeter, joined.Current.MilliamperesPerMeter, 1e-12);
    }

    [Property]
    public void Reach_takes_back_the_potential_it_came_from(FilmCase given)
    {
        // Very wide zinc that holds its edge: what the criterion asks for at the far end gives back the width.
        LinearCouple couple = given.Couple();
        if (couple.FarEnd.Above(couple.SteelEdge).Volts < 1e-6 || FilmCase.SteelV - couple.FarEnd.Volts < 1e-6)
        {
            return;
        }

        var criterion = ProtectionCriterion.FromPotential(couple.FarEnd, "what the far end of a made-up couple has");
        var reach = new LinearReach(given.Film, given.LinearSteel, couple.SteelEdge, criterion);
        Near.Equal(given.SteelMm, reach.ToMiddleOfGap.Millimeters, 1e-5);
        Assert.True(reach.OnEndlessSteel < reach.ToMiddleOfGap);
    }

    [Property]
    public void A_metal_alone_stays_at_rest(FilmCase given)
    {
        var profile = new ThinFilmProfile(given.Film, [new(given.Steel, Mm(given.SteelMm))]);
        Assert.All(profile.Points, static point => Near.Equal(FilmCase.SteelV, point.Potential.Volts, 1e-12));
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Errors.Refused(static () => new ThinFilm(Length.FromMicrometers(1001), ElectricConductivity.FromSiemensPerMeter(1)), "thickness", "1001 um", "at most 1000 um");
        Errors.Refused(static () => new ThinFilm(Length.FromMicrometers(0), ElectricConductivity.FromSiemensPerMeter(1)), "thickness", "more than 0");
        Errors.Refused(static () => new ThinFilm(Length.FromMicrometers(10), ElectricConductivity.FromSiemensPerMeter(0)), "conductivity", "more than 0");
        Errors.Refused(static () => FilmCase.Tafel("x", -0.6, 0, 0.06, 0.12, 1), "corrosionCurrent", "more than 0");
        Errors.Refused(static () => FilmCase.Tafel("x", -0.6, 1, 0.006, 0.12, 1), "anodicSlope", "0.006 V", "at least 0.01");
        Errors.Refused(static () => OxygenSupply.ShareOfFilm(0), "share", "more than 0 and at most 1");
        var film = new ThinFilm(Length.FromMicrometers(10), ElectricConductivity.FromSiemensPerMeter(1));
        Errors.Refused(() => FilmCase.Tafel("steel", -0.6, 1, 0.06, 0.12, 0.5).ResistanceAtRest(film), "supply", "0.5 A/m2", "more than 1 A/m2", "the corrosion current of steel");
        Errors.Refused(static () => new FilmSegment(new InertSurface("paint"), Length.Zero), "width", "0 mm", "at least 0.001");
        Errors.Refused(() => new ThinFilmProfile(film, []), "segments", "0 stretches");
        Assert.Contains("None of the stretches is a metal", Assert.Throws<ArgumentException>(() => new ThinFilmProfile(film, [new(new InertSurface("paint"), Mm(1))])).Message, StringComparison.Ordinal);
        Errors.Refused(() => new ThinFilmProfile(film, [new(new InertSurface("paint"), Mm(1))], 1e-12), "relativeError", "at least 0");
        Assert.Throws<ArgumentException>(static () => new InertSurface(" "));
        Assert.Throws<InvalidOperationException>(() => new LinearElectrode("x", default, PolarisationResistance.FromOhmSquareMeters(1)));
        Errors.Refused(() => new LinearReach(film, new LinearElectrode("s", FilmCase.Sce(-0.6), PolarisationResistance.FromOhmSquareMeters(1)), FilmCase.Sce(-0.7), ProtectionCriterion.SoilOrWater), "edge", "below the potential");
        Errors.Refused(() => new LinearReach(film, new LinearElectrode("s", FilmCase.Sce(-0.8), PolarisationResistance.FromOhmSquareMeters(1)), FilmCase.Sce(-1), ProtectionCriterion.SoilOrWater), "criterion", "below the rest potential");
    }
}
