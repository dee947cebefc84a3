using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Lays on surfaces of revolution.</content>
public sealed partial class ShownWorkings
{
    [Property(Arbitrary = [typeof(RevolvedCases)])]
    public void Of_lays_on_surfaces_of_revolution(RevolvedCase given)
    {
        LayChoices choices = Choices(0.5, 15, 2);
        var gores = new GoreLay(given.Surface(), given.Strip(), Mm(given.LapMm), choices);
        IReadOnlyDictionary<string, double> shown = Checked(gores);
        Near.Equal(gores.Gores, shown["n"], 0);
        Near.Equal(gores.Lap.Millimeters, shown["o_eq"], 1e-12, absolute: 1e-9);
        Near.Equal(gores.SmallestLap.Millimeters, shown["o_min"], 1e-12, absolute: 1e-9);
        Near.Equal(gores.LayersEverywhere, shown["n_all"], 0);
        Near.Equal(gores.Strips[0].Length.Millimeters, shown["L"], 0, absolute: 0.000501);
        Near.Equal(gores.Pucker.Fraction, shown[given.Closes ? "e_p" : "e_m"], 1e-12);
        var strips = new MeridianStripLay(given.Surface(), given.Strip(), Mm(given.LapMm), choices: choices);
        shown = Checked(strips);
        Near.Equal(strips.StripsRound, shown["n"], 0);
        Near.Equal(strips.Lap.Millimeters, shown["o_eq"], 1e-12, absolute: 1e-9);
        Near.Equal(strips.LayersEverywhere, shown["n_all"], 0);
        Near.Equal(strips.Lengths[^1].Length.Millimeters, shown["L"], 1e-12);
        Near.Equal(strips.Pucker.Fraction, shown[given.Closes ? "e_p" : "e_m"], 1e-12);
        var rings = new LatitudeRingLay(given.Surface(), given.Strip(), Mm(given.LapMm), choices);
        shown = Checked(rings);
        Near.Equal(rings.Rings, shown["n"], 0);
        Near.Equal(rings.Stretch.Fraction, shown["e_r"], 1e-12);
        Near.Equal(rings.Pucker.Fraction, shown[given.Closes ? "e_p" : "e_c"], 1e-12);
        Near.Equal(rings.Strips[given.Closes ? ^2 : ^1].Length.Millimeters, shown["L_r"], 0, absolute: 0.000501);
        if (given.Surface() is ConcentricReducer cone)
        {
            var development = new ConeDevelopment(cone);
            shown = Checked(development);
            Near.Equal(development.OuterRadius.Millimeters, shown["R_1"], 1e-12);
            Near.Equal(development.InnerRadius.Millimeters, shown["R_2"], 1e-12);
            Near.Equal(development.Angle.Degrees, shown["psi"], 1e-12);
        }
    }

    [Fact]
    public void Of_lays_on_a_cone_on_which_strips_stop()
    {
        var cone = new ConcentricReducer(Mm(1000), Mm(150), Mm(600));
        var strips = new MeridianStripLay(cone, Stock(100), Mm(15));
        IReadOnlyDictionary<string, double> shown = Checked(strips);
        Assert.InRange(strips.Lengths.Count, 2, 9);
        Near.Equal(strips.Lengths[^2].Length.Millimeters, shown["L_j"], 1e-12);
        Near.Equal(strips.Lengths[^1].Length.Millimeters, shown["L"], 1e-12);
        Near.Equal(strips.Pucker.Fraction, shown["e_m"], 1e-12);
        var gores = new GoreLay(cone, Stock(100), Mm(15));
        Near.Equal(gores.Gores, Checked(gores)["n"], 0);
    }

    [Fact]
    public void Of_lays_on_a_cone_with_equal_ends()
    {
        var cylinder = new ConcentricReducer(Mm(500), Mm(500), Mm(400));
        Near.Equal(400, Checked(new GoreLay(cylinder, Stock(100), Mm(15)))["L"], 1e-12);
        Near.Equal(400, Checked(new MeridianStripLay(cylinder, Stock(100), Mm(15)))["L"], 1e-12);
    }
}
