using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Number, outline and pucker of gores where they can be told without the library.</summary>
public sealed class GoresByHand
{
    // On a cone a gore is a triangle of the unrolled sector: half of it is L tan(m pi/n) at L = r/m from the apex. At 950 mm, m = 1/2
    // and 250 mm of room: pi/2 / atan(250/950) = 6.1, where the girth alone, 950 pi/500, would ask for 6.
    [Fact]
    public void A_cone_asks_for_more_than_its_girth()
    {
        var steps = new StepList();
        Assert.Equal(7, GoreKernel.Count(Input(Meridian.Open(950, 550, 400), 600, 100), 0, out GoreOutline outline, steps));
        Near.Equal(950 * Math.Tan(Math.PI / 14), GoreKernel.WidestHalfMm(outline, 7, steps), 1e-14);
        Assert.Equal([RevolvedFormulas.GoreCount, RevolvedFormulas.GoreHalf], steps.Under("gores").Steps.Select(static step => step.Formula));
    }

    // Twenty times 80 mm of room are the girth of the first ball to the last digit: what straight cuts lose beside the rim takes one
    // gore more. At half a millimetre less for each there is room for it.
    [Theory]
    [InlineData(80, 21)]
    [InlineData(79.5, 20)]
    public void Straight_cuts_beside_the_rim_may_cost_a_gore(double each, double gores)
    {
        Meridian ball = HemisphericalHead.FromOutside(Mm(20 * each / Math.PI), Length.Zero).Meridian;
        Assert.Equal(gores, GoreKernel.Count(Input(ball, 100, 20), 0, out GoreOutline outline, default(NoSteps)));
        Assert.All(outline.Stations, static station => Assert.InRange(2 * station.HalfMm, 0, 80));

        // A quarter circle in sixteen pieces: the half gore is R cos(a) tan(sin(a) pi/n)/sin(a), its straight cut lies inside by the most that
        // any of it stands out.
        double radius = 10 * each / Math.PI;
        GoreOutline.Station[] dish = [.. outline.Stations.TakeLast(17)];
        Assert.All(dish.Skip(1), (station, i) => Near.Equal(Math.Max(Stands(i), i == 15 ? 0 : Stands(i + 1)), station.ChordMm, 5e-3, absolute: 1e-9));

        double Half(double piece)
        {
            double sine = Math.Sin(piece * Math.PI / 32);
            return sine == 0 ? radius * Math.PI / gores : radius * Math.Cos(piece * Math.PI / 32) * Math.Tan(sine * Math.PI / gores) / sine;
        }

        double Stands(int piece) => Enumerable.Range(0, 1001).Max(i => Half(piece + (i / 1000.0)) - Half(piece) - ((Half(piece + 1) - Half(piece)) * i / 1000.0));
    }

    // A slope that is lost in rounding is shown as none, and one that is not as it is.
    [Theory]
    [InlineData(4e-8, true)]
    [InlineData(1e-9, true)]
    [InlineData(0, true)]
    [InlineData(0.001, false)]
    public void What_is_shown_of_a_slope(double slope, bool straight)
    {
        var steps = new StepList();
        var meridian = Meridian.Open(10_000, 10_000 - (2000 * slope), 1000);
        double count = GoreKernel.Count(Input(meridian, 100, 0), 0, out GoreOutline outline, steps);
        Assert.Equal(315, count);
        _ = GoreKernel.WidestHalfMm(outline, count, steps);
        Assert.Equal(
            straight ? [RevolvedFormulas.GoreCountStraight, RevolvedFormulas.GoreHalfStraight] : [RevolvedFormulas.GoreCount, RevolvedFormulas.GoreHalf],
            steps.Under("gores").Steps.Select(static step => step.Formula));
    }

    // An ellipse so flat that it turns within a fraction of a millimetre of its rim: three gores widen there from r pi/3 to r tan(pi/3) nearly
    // at once. Stations are set closer until a straight cut loses a fortieth of the room; where none is close enough, it is refused.
    [Fact]
    public void A_sharp_rim_takes_more_stations_and_too_sharp_a_rim_is_refused()
    {
        GoreOutline sharp = Outline(4);
        Assert.InRange(sharp.Stations.Count, 34, 1026);
        Assert.InRange(sharp.Stations.Max(static station => station.ChordMm), 0, 700.0 / 40);
        Assert.True(GoreOutline.Of(Flat(4), 3, sharp.Stations[^1].AlongMm, (sharp.Stations.Count - 1) / 2 / 16 * 16).Stations.Max(static station => station.ChordMm) > 700.0 / 40);
        Assert.Contains("too sharp", Assert.Throws<InvalidOperationException>(static () => Outline(0.01)).Message, StringComparison.Ordinal);

        static Meridian Flat(double depth) => Meridian.Head(400, 0, new MeridianEllipse(200, depth, 0));
        static GoreOutline Outline(double depth)
        {
            Assert.Equal(3, GoreKernel.Count(Input(Flat(depth), 720, 20), 0, out GoreOutline outline, default(NoSteps)));
            return outline;
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    public void Pucker_is_that_of_the_worst_station(double lap)
    {
        Meridian[] heads =
        [
            HemisphericalHead.FromOutside(Mm(2000), Mm(40)).Meridian,
            EllipsoidalHead.FromOutside(Mm(2000), Mm(300), Mm(40)).Meridian,
            EllipsoidalHead.FromOutside(Mm(2000), Mm(500), Length.Zero).Meridian,
            Meridian.Open(1000, 600, 400),
        ];
        foreach (Meridian head in heads)
        {
            var outline = GoreOutline.Of(head, 40, head.LengthMm, 16);
            double worst = outline.Stations.Max(station => RevolvedKernel.Pucker(station.HalfMm + (lap / 2), head.MostCurvatureTo(station.AlongMm) * 1e6, default(NoSteps)));
            Assert.Equal(worst, GoreKernel.Pucker(head, outline, lap, default(NoSteps)));
        }
    }

    private static RevolvedInput Input(Meridian meridian, double width, double lap) =>
        new(HemisphericalHead.FromOutside(Mm(2000), Length.Zero), meridian, Stock(width), lap, LayChoices.Default);
}
