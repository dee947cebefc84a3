using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Rings on mitred bends, counted spot by spot on each piece.</summary>
[Properties(Arbitrary = [typeof(FittingLayCases)], MaxTest = 100)]
public sealed class MitredBends
{
    [Property]
    public void Every_spot_lies_under_as_many_rings_as_promised(MitredCase given, byte seed)
    {
        foreach (double wander in new[] { 0.0, given.WidthMm * (seed % 20) / 100 })
        {
            MitredBendLay lay = given.Lay(Choices(wander));
            int least = Least(given, lay, wander, seed, lay.RingsOnMiddlePiece, lay.RingsOnEndPiece);
            Assert.True(least >= lay.LayersEverywhere, $"{least} rings where {lay.LayersEverywhere} were promised.");
            if (wander == 0)
            {
                Assert.Equal(1, lay.LayersEverywhere);
            }
        }
    }

    [Fact]
    public void The_count_sees_a_missing_ring()
    {
        var given = new MitredCase(168.3, 300, 90, 3, 40, 10, 2);
        MitredBendLay lay = given.Lay(Choices());
        Assert.True(lay.RingsOnMiddlePiece > 2);
        Assert.Equal(0, Least(given, lay, 0, 1, lay.RingsOnMiddlePiece - 1, lay.RingsOnEndPiece));
        Assert.Equal(0, Least(given, lay, 0, 1, lay.RingsOnMiddlePiece, lay.RingsOnEndPiece - 1));
    }

    [Property]
    public void Cover_is_the_area_of_the_bend_and_what_is_cut_off_is_counted(MitredCase given)
    {
        MitredBendLay lay = given.Lay(Choices());
        double pieces = lay.Strips.Sum(static strip => (double)strip.Count);
        double cover = lay.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count);
        Near.Equal(given.Bend().Area.SquareMeters * 1e6 / given.WidthMm, cover, 1e-8, absolute: 0.003 * pieces);
        Assert.All(lay.Strips, static strip => Assert.Equal(strip.LengthUm, strip.CoverUm + strip.LapUm + strip.TrimUm));
        Assert.True(lay.LayersOnAverage.Ratio >= 1 - 1e-6);

        // What stays is no more than the pieces with their reaches, once for each ring that could lie there.
        double kept = lay.Strips.Sum(static strip => (strip.Length - strip.Trim).Millimeters * strip.Count);
        Assert.True(kept >= cover - (0.003 * pieces));
    }

    [Property(MaxTest = 25)]
    public void What_stays_of_each_ring_is_what_lies_within_its_cuts(MitredCase given)
    {
        // Slices along the pipe, ring by ring, counted on a fine grid round it.
        MitredBendLay lay = given.Lay(Choices(0, 0));
        double kept = 0;
        const int Round = 4000;
        foreach ((double from, double to, bool middle, int alike) in Rings(given, lay, lay.RingsOnMiddlePiece, lay.RingsOnEndPiece))
        {
            for (int i = 0; i < Round; i++)
            {
                double end = End(given, 2 * Math.PI * (i + 0.5) / Round) + given.WeldLapMm;
                double stays = Math.Max(0, Math.Min(to, end) - (middle ? Math.Max(from, -end) : from));
                kept += alike * stays * Math.PI * given.DiameterMm / Round;
            }
        }

        double counted = lay.Strips.Sum(static strip => (strip.Length - strip.Trim).Millimeters * strip.Count);
        Near.Equal(kept / given.WidthMm, counted, 1e-4, absolute: 0.002 * lay.Strips.Sum(static strip => (double)strip.Count));
    }

    [Property]
    public void More_lap_never_takes_fewer_rings(MitredCase given)
    {
        MitredBendLay less = given.Lay(Choices());
        MitredBendLay more = (given with { LapMm = (given.LapMm + given.WidthMm) / 2 }).Lay(Choices());
        Assert.True(more.RingsOnEndPiece >= less.RingsOnEndPiece && more.RingsOnMiddlePiece >= less.RingsOnMiddlePiece);
    }

    [Fact]
    public void A_vanishing_mitre_is_rings_on_the_pipe()
    {
        // A middle piece 1000 mm long between two joints that hardly turn.
        const double Turn = 1e-4;
        double radius = 1000 / 2 / Math.Tan(Turn * Math.PI / 360);
        var bend = new MitredBend(Mm(168.3), Mm(Math.Min(1e8, radius)), Angle.FromDegrees(2 * Turn), 2);
        double length = 2 * bend.BendRadius.Millimeters * Math.Tan(Turn * Math.PI / 360);
        var lay = new MitredBendLay(bend, Stock(50), Mm(10), Mm(20), Choices());
        var pipe = new RingLay(Pipe(168.3, length + 40), Stock(50), Mm(10), Choices());
        Assert.Equal(pipe.Rings, lay.RingsOnMiddlePiece);
        Near.Equal(pipe.Lap.Millimeters, lay.MiddlePieceLap.Millimeters, 1e-4);
        Near.Equal(Pipe(168.3, 2 * length).Area.SquareMeters, bend.Area.SquareMeters, 1e-9);

        // Nothing is cut off but hairs.
        Assert.True(lay.Strips.Sum(static strip => strip.Trim.Millimeters * strip.Count) < 0.01 * lay.Strips.Sum(static strip => strip.TotalLength.Millimeters));
    }

    [Fact]
    public void Pieces_by_hand()
    {
        // R 300, D 100, 30 degrees a joint: tan 15 deg is 0.26795.
        var bend = new MitredBend(Mm(100), Mm(300), Angle.FromDegrees(90), 3);
        Near.Equal(30, bend.JointTurn.Degrees, 1e-15);
        Near.Equal(700 * 0.2679491924311227, bend.PieceOutside.Millimeters, 1e-14);
        Near.Equal(500 * 0.2679491924311227, bend.PieceInside.Millimeters, 1e-14);
    }

    [Fact]
    public void Wrong_dimensions() => Assert.Multiple(
        static () => Errors.Refused(static () => new MitredBendLay(new MitredBend(Mm(100), Mm(300), Angle.FromDegrees(90), 3), Stock(50), Mm(50), Mm(10)), "leastLap", "less than 50 mm"),
        static () => Errors.Refused(static () => new MitredBendLay(new MitredBend(Mm(100), Mm(300), Angle.FromDegrees(90), 3), Stock(50), Mm(10), Mm(70)), "weldLap", "at most 66.98"));

    private static double End(MitredCase given, double t) =>
        (given.RadiusMm + (given.DiameterMm / 2 * Math.Cos(t))) * Math.Tan(given.Degrees / given.Joints * Math.PI / 360);

    private static IEnumerable<(double From, double To, bool Middle, int Alike)> Rings(MitredCase given, MitredBendLay lay, int onMiddle, int onEnd)
    {
        double outside = End(given, 0) + given.WeldLapMm;
        for (int i = 0; i < onMiddle; i++)
        {
            double from = (lay.RingsOnMiddlePiece == 1 ? -given.WidthMm / 2 : -outside) + (i * (given.WidthMm - lay.MiddlePieceLap.Millimeters));
            yield return (from, from + given.WidthMm, true, given.Joints - 1);
        }

        for (int i = 0; i < onEnd; i++)
        {
            double from = -given.LapMm + (i * (given.WidthMm - lay.EndPieceLap.Millimeters));
            yield return (from, from + given.WidthMm, false, 2);
        }
    }

    // Spots of a middle and of an end piece, t round the pipe from the outside, z along it; a strip lies where its ring is
    // and, if it is cut short, within its own length on both sides of the outside.
    private static int Least(MitredCase given, MitredBendLay lay, double wander, int seed, int onMiddle, int onEnd)
    {
        double circumference = Math.PI * given.DiameterMm;
        double[] lengths = [.. lay.Strips.Select(static strip => strip.Length.Millimeters)];
        var random = new Random(seed);
        int least = int.MaxValue;
        foreach (bool middle in given.Joints > 1 ? new[] { true, false } : [false])
        {
            (double From, double To, bool Middle, int Alike)[] rings = [.. Rings(given, lay, onMiddle, onEnd).Where(ring => ring.Middle == middle)];
            for (int spot = 0; spot < 400; spot++)
            {
                double t = spot % 4 == 0 ? 0 : spot % 5 == 0 ? Math.PI : (random.NextDouble() * 2 * Math.PI) - Math.PI;
                double end = End(given, t);
                double low = middle ? -end : 0;
                double edge = spot % 2 == 0 && rings.Length > 0 ? rings[random.Next(rings.Length)].From + (random.Next(3) - 1) * 1e-3 : low + (random.NextDouble() * (end - low));
                double z = (spot % 9) switch { 0 => low, 1 => end, _ => Math.Clamp(edge, low, end) };
                int over = 0;
                for (int i = 0; i < rings.Length; i++)
                {
                    double shift = i % 2 == 0 ? 0 : wander;
                    double from = rings[i].From;
                    double near = middle ? Math.Max(0, Math.Max(from, -rings[i].To)) : Math.Max(0, from);
                    bool whole = near <= End(given, Math.PI) + given.WeldLapMm;
                    double half = circumference;
                    if (!whole)
                    {
                        // The piece that was cut for it: as long as the cut is where its nearer edge meets it.
                        double cosine = (near - End(given, Math.PI / 2) - given.WeldLapMm) / (End(given, 0) - End(given, Math.PI / 2));
                        double wanted = given.DiameterMm * Math.Acos(Math.Clamp(cosine, -1, 1));
                        Assert.Contains(lengths, length => Math.Abs(length - wanted) < 0.002);
                        half = (wanted / 2) + 0.001;
                    }

                    over += z >= from + shift - 2e-3 && z <= rings[i].To + shift + 2e-3 && Math.Abs(t) * given.DiameterMm / 2 <= half + 1e-3 ? 1 : 0;
                }

                // The next piece's tape reaches over the weld.
                over += end - z <= given.WeldLapMm - wander + 2e-3 || (middle && z + end <= given.WeldLapMm - wander + 2e-3) ? 1 : 0;
                least = Math.Min(least, over);
            }
        }

        return least;
    }
}
