using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Rings on tees, counted at spots in space that lie on one cylinder and outside the other.</summary>
[Properties(Arbitrary = [typeof(FittingLayCases)], MaxTest = 80)]
public sealed class TeeRings
{
    [Property]
    public void Every_spot_lies_under_as_many_strips_as_promised(TeeCase given, byte seed)
    {
        foreach (double wander in new[] { 0.0, given.WidthMm * (seed % 20) / 100 })
        {
            TeeLay lay = given.Lay(Choices(wander));
            int least = Least(given, lay, wander, seed, lay.RunRings, lay.BranchRings);
            Assert.True(least >= lay.LayersEverywhere, $"{least} strips where {lay.LayersEverywhere} were promised.");
            if (wander == 0)
            {
                Assert.Equal(1, lay.LayersEverywhere);
            }
        }
    }

    [Fact]
    public void The_count_sees_a_missing_ring()
    {
        var given = new TeeCase(168.3, 114.3, 143, 130, 40, 10, 10);
        TeeLay lay = given.Lay(Choices());
        Assert.Equal(0, Least(given, lay, 0, 1, lay.RunRings - 1, lay.BranchRings));
        Assert.Equal(0, Least(given, lay, 0, 1, lay.RunRings, lay.BranchRings - 1));
    }

    [Property]
    public void Cover_is_the_area_of_the_tee_and_the_ledger_closes(TeeCase given)
    {
        TeeLay lay = given.Lay(Choices());
        double pieces = lay.Strips.Sum(static strip => (double)strip.Count);
        Near.Equal(given.Tee().Area.SquareMeters * 1e6 / given.WidthMm, lay.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count), 1e-8, absolute: 0.003 * pieces);
        Assert.All(lay.Strips, static strip => Assert.Equal(strip.LengthUm, strip.CoverUm + strip.LapUm + strip.TrimUm));
        Assert.True(lay.LayersOnAverage.Ratio >= 1 - 1e-6);
    }

    [Theory]
    [InlineData(168.3, 168.3)]
    [InlineData(168.3, 114.3)]
    [InlineData(1000, 20)]
    [InlineData(1000, 999.9)]
    public void Pieces_of_the_hole_and_of_the_fish_mouth_add_up_to_closed_forms(double run, double branch)
    {
        double hole = TeeLayKernel.HoleMm2(run, branch, -branch, branch * 0.13) + TeeLayKernel.HoleMm2(run, branch, branch * 0.13, branch);
        Near.Equal(TeeKernel.HoleSquareMeters(run, branch, default(NoSteps)) * 1e6, hole, 1e-10);

        // The saddle line stands d D E(k) above the axis, summed round the branch: all the branch below the ridge.
        double low = TeeLayKernel.LowestMm(run, branch);
        double cut = low + (0.3 * ((run / 2) - low));
        double below = TeeLayKernel.BelowMm2(run, branch, 0, 0, cut) + TeeLayKernel.BelowMm2(run, branch, 0, cut, run);
        const int Parts = 400_000;
        double sum = 0;
        for (int i = 0; i < Parts; i++)
        {
            sum += Math.Sqrt((run * run / 4) - Math.Pow(branch / 2 * Math.Sin((i + 0.5) * Math.PI / Parts), 2)) * Math.PI * branch / Parts;
        }

        Near.Equal(sum, below, 1e-8);
    }

    [Property]
    public void The_flap_reaches_as_far_as_stated_square_to_the_saddle_line(TeeCase given)
    {
        // On the branch unrolled: every point of the cut against every point of the line.
        double flap = given.Lay(Choices()).Flap.Millimeters;
        const int Points = 720;
        (double X, double Z)[] line = [.. Enumerable.Range(0, Points + 1).Select(i => (given.BranchMm / 2 * i * Math.PI / Points, Height(given, i * Math.PI / Points)))];
        double least = line.Min(cut => line.Min(on => Math.Sqrt(Math.Pow(cut.X - on.X, 2) + Math.Pow(cut.Z - flap - on.Z, 2))));
        Assert.True(least >= given.SaddleLapMm - 1e-9);
        Assert.True(least <= (given.SaddleLapMm * Math.Sqrt(2)) + 1e-9);
    }

    [Property]
    public void More_lap_never_takes_fewer_metres(TeeCase given)
    {
        TeeLay more = (given with { LapMm = (given.LapMm + given.WidthMm) / 2 }).Lay(Choices());
        Assert.True(more.RunRings >= given.Lay(Choices()).RunRings && more.BranchRings >= given.Lay(Choices()).BranchRings);
    }

    [Fact]
    public void A_thin_branch_leaves_the_rings_of_the_run_whole()
    {
        var lay = new TeeLay(new Tee(Mm(1000), Mm(10), Mm(800), Mm(600)), Stock(100), Mm(10), Mm(5), Choices(0, 15));
        Strip[] run = [.. lay.Strips.Where(static strip => strip.Length.Millimeters > 1000)];
        Assert.Equal(lay.RunRings, run.Sum(static strip => strip.Count));
        Near.Equal((Math.PI * 1000) + 15, run.Single().Length.Millimeters, 0, absolute: 0.001);
    }

    [Fact]
    public void Wrong_dimensions() => Assert.Multiple(
        static () => Errors.Refused(static () => new TeeLay(new Tee(Mm(100), Mm(60), Mm(90), Mm(85)), Stock(50), Mm(50), Mm(10)), "leastLap", "less than 50 mm"),
        static () => Errors.Refused(static () => new TeeLay(new Tee(Mm(100), Mm(60), Mm(90), Mm(85)), Stock(50), Mm(10), Mm(51)), "saddleLap", "at most 50 mm"));

    private static double Height(TeeCase given, double t) =>
        Math.Sqrt(Math.Max(0, (given.RunMm * given.RunMm / 4) - Math.Pow(given.BranchMm / 2 * Math.Sin(t), 2)));

    private static int Least(TeeCase given, TeeLay lay, double wander, int seed, int runRings, int branchRings)
    {
        double[] lengths = [.. lay.Strips.Select(static strip => strip.Length.Millimeters)];
        double half = given.BranchMm / 2;
        double radius = given.RunMm / 2;
        double width = given.WidthMm;
        var random = new Random(seed);
        int least = int.MaxValue;
        double spacing = width - lay.RunLap.Millimeters;
        double first = -given.RunEndMm - lay.RunLap.Millimeters;
        for (int spot = 0; spot < 600; spot++)
        {
            // On the run: s round it from the ridge under the branch, x along it.
            double s = (random.NextDouble() * 2 * Math.PI) - Math.PI;
            double x = (spot % 6) switch
            {
                0 => -given.RunEndMm,
                1 => given.RunEndMm,
                2 => Math.Clamp(first + (random.Next(lay.RunRings) * spacing) + ((random.Next(3) - 1) * 1e-3), -given.RunEndMm, given.RunEndMm),
                _ => ((random.NextDouble() * 2) - 1) * given.RunEndMm,
            };
            if (spot % 4 == 3)
            {
                // Just outside the saddle line.
                double t = random.NextDouble() * 2 * Math.PI;
                x = half * 1.0001 * Math.Cos(t);
                s = Math.Asin(Math.Clamp(half * 1.0001 * Math.Sin(t) / radius, -1, 1));
            }

            double y = radius * Math.Sin(s);
            if (Math.Cos(s) > 0 && (x * x) + (y * y) < half * half)
            {
                continue; // within the branch: no surface there
            }

            int over = 0;
            for (int i = 0; i < runRings; i++)
            {
                double from = first + (i * spacing);
                double shift = i % 2 == 0 ? 0 : wander;
                double far = Math.Max(Math.Abs(from), Math.Abs(from + width));
                double reach = Math.PI * radius;
                if (far < half)
                {
                    double open = (2 * Math.PI * radius) - (2 * radius * Math.Asin(Math.Sqrt((half * half) - (far * far)) / radius));
                    Assert.Contains(lengths, length => Math.Abs(length - open) < 0.002);
                    reach = open / 2;
                }

                // An open ring lies with its middle on the underside.
                double fromBelow = (Math.PI - Math.Abs(s)) * radius;
                over += x >= from + shift - 1e-3 && x <= from + width + shift + 1e-3 && fromBelow <= reach + (far < half && wander > 0 ? wander * radius : 2e-3) ? 1 : 0;
            }

            least = Math.Min(least, over);
        }

        double bottom = Math.Sqrt(Math.Max(0, (radius * radius) - (half * half))) - lay.Flap.Millimeters;
        double climb = width - lay.BranchLap.Millimeters;
        for (int spot = 0; spot < 600; spot++)
        {
            // On the branch: t round it from the ridge of the run, z above the run's axis.
            double t = (spot % 5) switch { 0 => 0, 1 => Math.PI / 2, _ => random.NextDouble() * 2 * Math.PI };
            double saddle = Height(given, t);
            double z = (spot % 6) switch
            {
                0 => saddle,
                1 => given.BranchEndMm,
                2 => Math.Clamp(bottom + (random.Next(lay.BranchRings) * climb) + ((random.Next(3) - 1) * 1e-3), saddle, given.BranchEndMm),
                _ => saddle + (random.NextDouble() * (given.BranchEndMm - saddle)),
            };
            int over = 0;
            for (int i = 0; i < branchRings; i++)
            {
                double from = bottom + (i * climb);
                double shift = i % 2 == 0 ? 0 : wander;
                double top = from + width + lay.Flap.Millimeters;
                double flank = half * Math.PI;
                if (top < radius)
                {
                    double crescent = half * (Math.PI - (2 * Math.Asin(Math.Min(1, Math.Sqrt((radius * radius) - (top * top)) / half))));
                    Assert.Contains(lengths, length => Math.Abs(length - crescent) < 0.002);
                    flank = crescent / 2;
                }

                double fromFlank = half * Math.Min(Math.Abs((t % Math.PI) - (Math.PI / 2)), Math.PI / 2);
                over += z >= from + shift - 1e-3 && z <= from + width + shift + 1e-3 && fromFlank <= flank + (wander > 0 ? half * Math.PI : 2e-3) ? 1 : 0;
            }

            least = Math.Min(least, over);
        }

        return least;
    }
}
