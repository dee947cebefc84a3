using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Rings on a bend: cover proved by counting, laps as promised, strain against the curvature equation.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 200)]
public sealed class BendRings
{
    [Property]
    public void Laps_close_the_outside_and_one_ring_fewer_would_not(BendCase given)
    {
        BendRingLay lay = Lay(given);
        double arc = given.Bend().OutsideArc.Millimeters;
        double n = lay.Rings;
        Near.Equal(arc, (n * given.WidthMm) - ((n + 1) * lay.OutsideLap.Millimeters), 1e-10, absolute: 1e-9);
        Assert.True(lay.OutsideLap.Millimeters >= given.LapMm - (1e-9 * arc));
        Assert.True(((n - 1) * given.WidthMm) - (n * given.LapMm) < arc + (1e-9 * arc));
        Assert.True(lay.InsideLap >= lay.OutsideLap);
    }

    [Property(MaxTest = 60)]
    public void Every_spot_lies_under_as_many_rings_as_promised_even_when_the_hand_wanders(BendCase given)
    {
        foreach (double wander in new[] { 0.0, 1.5 })
        {
            BendRingLay lay = new(given.Bend(), Stock(given.WidthMm), Mm(given.LapMm), Choices(wander, 0));
            Assert.True(Least(given, lay, wander) >= lay.LayersEverywhere);
        }
    }

    [Property(MaxTest = 60)]
    public void Without_wander_no_spot_is_bare(BendCase given) => Assert.Equal(1, Lay(given).LayersEverywhere);

    [Property]
    public void Tape_on_the_bend_is_cover_and_lap(BendCase given)
    {
        Strip ring = Lay(given).Strips.Single();
        Assert.Equal(ring.LengthUm, ring.CoverUm + ring.LapUm);
        Near.Equal(
            given.Bend().Area.SquareMeters * 1e6, ring.Cover.Millimeters * ring.Count * given.WidthMm, 1e-9, absolute: 0.000501 * ring.Count * given.WidthMm);
    }

    [Property]
    public void More_lap_never_takes_fewer_metres(BendCase given)
    {
        var more = new BendRingLay(given.Bend(), Stock(given.WidthMm), Mm((given.LapMm + given.WidthMm) / 2), Choices());
        Assert.True(more.Strips[0].TotalLength.Millimeters >= Lay(given).Strips[0].TotalLength.Millimeters);
    }

    [Property]
    public void Strain_follows_from_the_curvature_equation(BendCase given)
    {
        BendRingLay lay = Lay(given);
        double tube = given.DiameterMm / 2;
        Near.Equal(1 - Jacobi(1 / (tube * (given.RadiusMm + tube)), given.WidthMm / 2), lay.Pucker.Fraction, 1e-6);
        Near.Equal(Jacobi(-1 / (tube * (given.RadiusMm - tube)), given.WidthMm / 2) - 1, lay.Stretch.Fraction, 1e-6);
        Assert.True(lay.Stretch.Fraction > lay.Pucker.Fraction);
    }

    [Property]
    public void The_widest_strip_is_just_within_both_limits(BendCase given)
    {
        EdgeStrain pucker = EdgeStrain.FromFraction(0.01);
        EdgeStrain stretch = EdgeStrain.FromFraction(0.03);
        Length widest = BendRingLay.WidestStrip(given.Bend(), pucker, stretch);
        if (widest.Millimeters < 1 || widest.Millimeters > 2000)
        {
            return;
        }

        var lay = new BendRingLay(given.Bend(), new StripStock(Tape(), widest, Length.FromMeters(30)), Length.Zero);
        Assert.True(lay.Pucker.Fraction <= 0.01 * (1 + 1e-9) && lay.Stretch.Fraction <= 0.03 * (1 + 1e-9));
        Assert.True(lay.Pucker.Fraction >= 0.01 * (1 - 1e-9) || lay.Stretch.Fraction >= 0.03 * (1 - 1e-9));
    }

    [Fact]
    public void Rules_speak_of_pucker_and_stretch()
    {
        var lay = new BendRingLay(Bend.LongRadius(PipeSize.FromNps("6"), Angle.FromDegrees(90)), Stock(), Mm(15));
        string[] said = [.. lay.Judge(RuleSet.Default, "B-1").Select(static finding => finding.Rule.Id)];
        Assert.Contains(RuleIds.MaximumPucker, said);
        Assert.Contains(RuleIds.MaximumStretch, said);
    }

    [Fact]
    public void A_strip_that_would_fold_is_refused() => Assert.Contains(
        "wider strips fold on this bend",
        Assert.Throws<ArgumentOutOfRangeException>(static () => new BendRingLay(new Bend(Mm(60.3), Mm(40), Angle.FromDegrees(90)), Stock(300), Mm(10))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void A_lap_wider_than_the_strip_is_refused() => Assert.Equal(
        "leastLap",
        Assert.Throws<ArgumentOutOfRangeException>(static () => new BendRingLay(new Bend(Mm(168.3), Mm(229), Angle.FromDegrees(90)), Stock(50), Mm(60))).ParamName);

    private static BendRingLay Lay(BendCase given) => new(given.Bend(), Stock(given.WidthMm), Mm(given.LapMm), Choices());

    // J'' = -K J with J(0) = 1, J'(0) = 0, in small steps: how long the line beside a geodesic is for each unit of it.
    private static double Jacobi(double curvature, double distance)
    {
        const int Steps = 2000;
        double h = distance / Steps;
        double j = 1;
        double slope = -curvature * h / 2; // leapfrog: the slope half a step ahead
        for (int i = 0; i < Steps; i++)
        {
            j += slope * h;
            slope -= curvature * j * h;
        }

        return j;
    }

    // Rings at equal angles; a ring covers what lies within half its width along the bend's circle through the spot.
    // The straight pipe's tape ends at the tangents and covers nothing of the bend itself.
    private static int Least(BendCase given, BendRingLay lay, double wanderMm)
    {
        double tube = given.DiameterMm / 2;
        double bend = given.Degrees * Math.PI / 180;
        double outside = given.RadiusMm + tube;
        double spacing = (given.WidthMm - lay.OutsideLap.Millimeters) / outside;
        double first = ((given.WidthMm / 2) - lay.OutsideLap.Millimeters) / outside;
        int least = int.MaxValue;
        for (int a = 0; a <= 24; a++)
        {
            double radius = given.RadiusMm + (tube * Math.Cos(a * Math.PI / 24));
            for (int b = 0; b <= 400; b++)
            {
                double phi = bend * b / 400;
                int over = 0;
                for (int i = 0; i < lay.Rings; i++)
                {
                    // Every other ring is laid off by the whole of what a lap may lose.
                    double centre = first + (i * spacing) + (i % 2 == 0 ? 0 : wanderMm / outside);
                    over += Math.Abs(phi - centre) * radius <= (given.WidthMm / 2) + 1e-6 ? 1 : 0;
                }

                least = Math.Min(least, over);
            }
        }

        return least;
    }
}
