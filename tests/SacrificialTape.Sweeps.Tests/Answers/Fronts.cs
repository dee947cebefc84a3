using FsCheck;
using FsCheck.Xunit;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>Cost against life: against the front by comparing every row with every other.</summary>
public sealed class Fronts
{
    [Property(MaxTest = 300)]
    public void Every_point_is_beaten_by_no_row_and_no_row_is_far_from_the_front(NonNegativeInt seed, PositiveInt bins)
    {
        (double[] costs, double[] lives) = Rows((ulong)seed.Get, 200);
        var front = new TradeOffFront(5, 80, (bins.Get % 60) + 1);
        front.Add(0, costs, lives);
        Assert.Equal(200, front.Count);
        HashSet<long> exact = [.. Enumerable.Range(0, 200).Where(i => !Enumerable.Range(0, 200).Any(j => Beats(costs, lives, j, i))).Select(static i => (long)i)];
        Assert.All(front.Points, point => Assert.Contains(point.Row, exact));
        Assert.All(front.Points, point => Assert.Equal((costs[point.Row], lives[point.Row]), (point.Cost, point.Life)));
        foreach (long row in exact)
        {
            double edge = front.Edges.Append(double.PositiveInfinity).First(one => one > costs[row]);
            Assert.Contains(front.Points, point => point.Life >= lives[row] && (point.Cost < edge || point.Cost <= costs[row]));
        }

        Assert.Equal(front.Points.OrderBy(static point => point.Cost), front.Points);
        Assert.Equal(front.Points.OrderBy(static point => point.Life), front.Points);
    }

    // So many bins that each row has one of its own: then the front is exact.
    [Fact]
    public void With_fine_bins_the_front_is_exact()
    {
        (double[] costs, double[] lives) = Rows(3, 300);
        var front = new TradeOffFront(1, 1000, 200_000);
        front.Add(0, costs, lives);
        long[] exact = [.. Enumerable.Range(0, 300).Where(i => !Enumerable.Range(0, 300).Any(j => Beats(costs, lives, j, i)))
            .OrderBy(i => costs[i]).Select(static i => (long)i)];
        Assert.Equal(exact, front.Points.Select(static point => point.Row));
        Assert.True(exact.Length > 5);
    }

    [Fact]
    public void Slices_join_in_any_order()
    {
        (double[] costs, double[] lives) = Rows(8, 1000);
        for (int i = 0; i < 1000; i++)
        {
            // Many equal rows, of which the first must stay.
            (costs[i], lives[i]) = (Math.Ceiling(costs[i]), Math.Ceiling(lives[i]));
        }

        var whole = new TradeOffFront(1, 100, 20, RangeSpacing.Linear);
        whole.Add(0, costs, lives);
        TradeOffFront joined = whole.Fresh();
        foreach (int start in new[] { 600, 0, 800, 200, 400 })
        {
            TradeOffFront part = whole.Fresh();
            part.Add(start, costs.AsSpan(start, 200), lives.AsSpan(start, 200));
            joined.Join(part);
        }

        Assert.Equal(whole.Points, joined.Points);
        Assert.Equal(whole.ToString(), joined.ToString());
        Assert.Equal((1000, 0), (joined.Count, joined.LeftOut));
    }

    [Fact]
    public void Of_a_study_it_is_the_one_of_its_rows()
    {
        var inputs = new SweepInputs([new("zinc", "um", new UniformValues(20, 200)), new("rate", "um/a", new LogNormalValues(2, 0.3))]);
        var study = new Study(inputs, new RandomDesign(4, 5000), ["cost", "life"], static (rows, answers) =>
        {
            for (int i = 0; i < rows.Rows; i++)
            {
                answers["cost"][i] = 10 + (0.1 * rows["zinc"][i]);
                answers["life"][i] = rows["zinc"][i] / rows["rate"][i];
            }
        });
        var front = new TradeOffFront(10, 40, 50);
        front.Add(study, "cost", "life", cancellation: TestContext.Current.CancellationToken);
        StudyRows all = study.Work(0, 5000);
        var plain = front.Fresh();
        plain.Add(0, all.Answers["cost"], all.Answers["life"]);
        Assert.Equal(plain.Points, front.Points);
        var half = front.Fresh();
        half.Add(study, "cost", "life", study.Slice(0, 2), TestContext.Current.CancellationToken);
        Assert.Equal(2500, half.Count);
    }

    [Fact]
    public void What_is_no_number_is_left_out_and_endless_lives_count()
    {
        var front = new TradeOffFront(1, 10, 3);
        front.Add(10, [1, double.NaN, 2, double.PositiveInfinity, 0.5, 20], [5, 6, double.NaN, 7, 1, double.PositiveInfinity]);
        Assert.Equal((3, 3), (front.Count, front.LeftOut));
        Assert.Equal([new(14, 0.5, 1), new(10, 1, 5), new(15, 20, double.PositiveInfinity)], front.Points);
        Assert.Throws<ArgumentException>("lives", () => front.Add(0, [1], [1, 2]));
        Assert.Throws<ArgumentException>("other", () => front.Join(new TradeOffFront(1, 10, 4)));
        Assert.Throws<ArgumentOutOfRangeException>("bins", static () => new TradeOffFront(1, 10, 0));
    }

    private static bool Beats(double[] costs, double[] lives, int one, int other) =>
        (costs[one] <= costs[other] && lives[one] >= lives[other] && (costs[one] < costs[other] || lives[one] > lives[other]))
        || (costs[one] == costs[other] && lives[one] == lives[other] && one < other);

    private static (double[] Costs, double[] Lives) Rows(ulong seed, int count)
    {
        var inputs = new SweepInputs([new("cost", "", new RangedValues(2, 120, spacing: RangeSpacing.Logarithmic)), new("noise", "", new UniformValues(0.3, 1))]);
        SweepBlock block = new RandomDesign(seed, count).Make(inputs, 0, count);
        double[] costs = block[0].ToArray();
        double[] lives = [.. block[1].ToArray().Select((noise, i) => 10 * noise * Math.Sqrt(costs[i]))];
        return (costs, lives);
    }
}
