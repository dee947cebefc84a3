using FsCheck.Xunit;
using SacrificialTape.Tests.Wrapping;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Provenance;

/// <content>Lays on bends, mitred bends, tees and eccentric reducers; weld seams.</content>
public sealed partial class ShownWorkings
{
    [Property(Arbitrary = [typeof(FittingLayCases)])]
    public void Of_a_spiral_on_a_bend(BendSpiralCase given)
    {
        BendSpiralLay lay = given.Lay(Choices(1.5, 15, 2));
        IReadOnlyDictionary<string, double> shown = Checked(lay);
        Near.Equal(lay.Turns, shown["n_t"], 0);
        Near.Equal(lay.OutsideAdvance.Millimeters, shown["p_out"], 1e-12);
        Near.Equal(lay.InsideAdvance.Millimeters, shown["p_in"], 1e-12);
        Near.Equal(lay.OutsideLap.Millimeters, shown["o_out"], 1e-12, absolute: 1e-9);
        Near.Equal(lay.InsideLap.Millimeters, shown["o_in"], 1e-12);
        Near.Equal(lay.OutsideAngle.Degrees, shown["theta_out"], 1e-12);
        Near.Equal(lay.LayersEverywhere, shown["n_all"], 0);
        Near.Equal(lay.Strips[0].Length.Millimeters, shown["L"], 0, absolute: 0.000501);
        Near.Equal(lay.Pucker.Fraction, shown["e_pucker"], 1e-12);
        Ends(shown, lay.Stretch.Fraction);
    }

    [Property(Arbitrary = [typeof(FittingLayCases)])]
    public void Of_rings_on_a_mitred_bend(MitredCase given)
    {
        MitredBendLay lay = given.Lay(Choices(1.5, 15, 2));
        IReadOnlyDictionary<string, double> shown = Checked(lay);
        Near.Equal(lay.LayersEverywhere, shown["n_all"], 0);
        Near.Equal(lay.RingsOnEndPiece, shown["n"], 0);
        Tape(lay, shown);
        Near.Equal(given.Bend().PieceInside.Millimeters, Checked(given.Bend())["l_in"], 1e-12);
    }

    [Property(Arbitrary = [typeof(FittingLayCases)])]
    public void Of_rings_on_a_tee(TeeCase given)
    {
        TeeLay lay = given.Lay(Choices(1.5, 15, 2));
        IReadOnlyDictionary<string, double> shown = Checked(lay);
        Near.Equal(lay.LayersEverywhere, shown["n_all"], 0);
        Near.Equal(lay.RunRings, shown["n_r"], 0);
        Near.Equal(lay.BranchRings, shown["n"], 0);
        Near.Equal(lay.RunLap.Millimeters, shown["o_r"], 1e-12);
        Near.Equal(lay.Flap.Millimeters, shown["f"], 1e-12);
        Tape(lay, shown);
    }

    [Property(Arbitrary = [typeof(FittingLayCases)])]
    public void Of_strips_along_an_eccentric_reducer(EccentricCase given)
    {
        EccentricReducerLay lay = given.Lay(Choices(1.5, 15, 2));
        IReadOnlyDictionary<string, double> shown = Checked(lay);
        Near.Equal(lay.LayersEverywhere, shown["n_all"], 0);
        Near.Equal(lay.StripsRound, shown["n"], 0);
        Near.Equal(lay.SmallEndLap.Millimeters, shown["o_2"], 1e-12);
        Tape(lay, shown);
    }

    [Property]
    public void Of_spirals_of_opposite_hand(SpiralCase given)
    {
        var first = new SpiralLay(Pipe(given.DiameterMm, given.HeightMm), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)));
        var lay = new SpiralPairLay(first, new SpiralLay(first.Pipe, first.Stock, SpiralSetting.FromTrueLap(Mm(given.TrueLapMm / 2 + given.WidthMm / 2)), SpiralEnds.LevelTurns()));
        Near.Equal(lay.LayersEverywhere, Checked(lay)["n_pair"], 0);
    }

    [Property]
    public void Of_seams(SpanCase given)
    {
        double run = 10 + given.SpanMm;
        SeenTypes[typeof(WeldWork)] = true;
        WeldSeam[] seams =
        [
            new SaddleWelds(Mm(run), Mm(Math.Max(1, run * given.LapMm / given.WidthMm)), 2),
            new SaddleWelds(Mm(run), Mm(run), 1),
            new MitreWelds(Mm(run), Angle.FromDegrees(1 + (178 * given.LapMm / given.WidthMm)), 3),
            new PlateWelds(new Shell(Mm(run), Mm(6000), ShellAxis.Upright), 4, 3),
            GirthWelds.OfHead(FlatHead.FromOutside(Mm(run), Mm(10)), 2),
            new FilletWelds(Mm(run), Mm(6), 4),
        ];
        foreach (WeldSeam seam in seams)
        {
            Workings shown = new SacrificialTape.Jobs.WeldWork([seam], Stock(), Mm(20)).ShowWorkings();
            Assert.All(shown.Steps, static step => Assert.True(Recomputation.Agrees(step, Recomputation.Of(step)), step.ToString()));
            Assert.Equal(seam is FilletWelds, shown.Steps.Count == 0);
            Assert.Equal(seam is SaddleWelds, shown.Steps.Any(static step => step.Formula.Id == "tee.modulus"));
            foreach (WorkingStep step in shown.Steps)
            {
                Seen[step.Formula.Id] = true;
            }
        }
    }

    private void BendLaysOnce()
    {
        this.Of_a_spiral_on_a_bend(new BendSpiralCase(168.3, 229, 90, 40, 10));
        this.Of_rings_on_a_mitred_bend(new MitredCase(168.3, 300, 90, 3, 50, 10, 15));
        this.Of_rings_on_a_mitred_bend(new MitredCase(600, 700, 90, 1, 25, 5, 5));
        this.Of_rings_on_a_tee(new TeeCase(168.3, 168.3, 143, 143, 50, 10, 10));
        this.Of_strips_along_an_eccentric_reducer(new EccentricCase(168.3, 114.3, 140, 50, 10));
        this.Of_spirals_of_opposite_hand(new SpiralCase(168.3, 100, 20, 12_000, 2));
        this.Of_seams(new SpanCase(1000, 100, 10));
    }

    private static void Tape(ILay lay, IReadOnlyDictionary<string, double> shown)
    {
        double counted = lay.Strips.Sum(static strip => (double)strip.Count);
        Near.Equal(shown["L_all"], lay.Strips.Sum(static strip => strip.TotalLength.Millimeters), 0, absolute: 0.000501 * counted);
        Near.Equal(shown["T"], lay.Strips.Sum(static strip => strip.Trim.Millimeters * strip.Count), 1e-9, absolute: 0.001 * counted);
    }
}
