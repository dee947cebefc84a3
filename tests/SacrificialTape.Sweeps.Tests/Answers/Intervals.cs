using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>
/// How often intervals of indices hold the true ones, which are known in closed form: a law over fixed seeds. Of 160 intervals with a
/// coverage of 90 % between 134 and 155 hold the truth with a chance of 99.9 %, of 50 % between 60 and 100.
/// </summary>
public sealed class Intervals
{
    private const int Seeds = 160;

    // The closed forms stand with the tests of the indices themselves.
    private static readonly double[] OfIshigamiFirst = [0.3139, 0.4424, 0];
    private static readonly double[] OfIshigamiTotal = [0.5576, 0.4424, 0.2437];
    private static readonly double[] Weights = [0, 1, 4.5, 9];

    [Fact]
    public void Of_the_Ishigami_function_they_hold_the_truth_as_often_as_stated()
    {
        double[,] held = Coverage(Uniform(3, -Math.PI, Math.PI), Ishigami, OfIshigamiFirst, OfIshigamiTotal, static seed => new RandomDesign(seed, 512));
        Within(held, 0.9, 134, 155);
        held = Coverage(Uniform(3, -Math.PI, Math.PI), Ishigami, OfIshigamiFirst, OfIshigamiTotal, static seed => new RandomDesign(seed, 512), 0.5);
        Within(held, 0.5, 60, 100);
    }

    [Fact]
    public void Of_the_g_function_they_hold_the_truth_as_often_as_stated()
    {
        (double[] first, double[] total) = OfG();
        Within(Coverage(Uniform(4, 0, 1), G, first, total, static seed => new RandomDesign(seed + 1000, 512)), 0.9, 134, 155);
    }

    // Even points err less than random ones in most figures: the intervals are as wide as for random ones.
    [Fact]
    public void Of_an_even_design_they_hold_the_truth_as_often_or_more()
    {
        (double[] first, double[] total) = OfG();
        Within(Coverage(Uniform(4, 0, 1), G, first, total, static seed => new SobolDesign(seed, 512)), 0.9, 134, Seeds);
    }

    [Fact]
    public void Four_times_the_points_halve_the_width()
    {
        double few = Width(2_000);
        double many = Width(32_000);
        Assert.Equal(4, few / many, 1.0);

        static double Width(int points)
        {
            SobolIndices indices = Indices(Uniform(3, -Math.PI, Math.PI), Ishigami, new RandomDesign(5, points));
            return indices.FirstOrderIntervals(0.95).Concat(indices.TotalIntervals(0.95)).Sum(static one => one.High - one.Low);
        }
    }

    [Fact]
    public void Slices_joined_give_the_same_intervals_bit_for_bit()
    {
        SweepInputs inputs = Uniform(3, -Math.PI, Math.PI);
        var design = new PickFreezeDesign(new RandomDesign(9, 1000));
        double[] answers = Answers(design, inputs, Ishigami);
        var whole = new SobolIndices(design, inputs);
        whole.Add(0, answers);
        var joined = new SobolIndices(design, inputs);
        for (int end = 5000; end > 0; end -= 1250)
        {
            var part = new SobolIndices(design, inputs);
            part.Add(end - 1250, answers.AsSpan(end - 1250, 1250));
            joined.Join(part);
        }

        Assert.Equal(whole.FirstOrderIntervals(0.9), joined.FirstOrderIntervals(0.9));
        Assert.Equal(whole.TotalIntervals(0.9), joined.TotalIntervals(0.9));
        Assert.All(Enumerable.Range(0, 3), i => Assert.True(whole.FirstOrderIntervals(0.9)[i].Holds(whole.FirstOrder[i])));
    }

    // The jackknife by its definition: every group left out in turn, and the indices of the rest worked out anew from exact sums.
    [Fact]
    public void Leaving_out_a_group_is_working_out_the_rest_anew()
    {
        SweepInputs inputs = Uniform(3, -Math.PI, Math.PI);
        double[] answers = [.. Answers(new PickFreezeDesign(new RandomDesign(9, 640)), inputs, Ishigami).Select(static one => one + 1000)];
        SobolSums[] groups = [.. Enumerable.Range(0, 32).Select(static _ => new SobolSums(3))];
        var whole = new SobolSums(3);
        for (int point = 0; point < 640; point++)
        {
            groups[point % 32].Take(answers.AsSpan(point * 5, 5));
            whole.Take(answers.AsSpan(point * 5, 5));
        }

        double[][] first = SobolSums.LeftOut(groups, whole, total: false);
        double[][] total = SobolSums.LeftOut(groups, whole, total: true);
        for (int g = 0; g < 32; g++)
        {
            var rest = new SobolSums(3);
            foreach (SobolSums group in groups.Where((_, i) => i != g))
            {
                rest.Add(group);
            }

            for (int i = 0; i < 3; i++)
            {
                Assert.Equal(rest.FirstOrder(i), first[i][g], 1e-10);
                Assert.Equal(rest.Total(i), total[i][g], 1e-10);
            }
        }
    }

    // The mean of absolute effects over all places of the grid, by going through every one of them.
    [Fact]
    public void Of_Morris_effects_they_hold_the_truth_as_often_as_stated()
    {
        SweepInputs inputs = Uniform(3, -Math.PI, Math.PI);
        double[] level = [.. Enumerable.Range(0, 8).Select(static i => -Math.PI + (2 * Math.PI * (i + 0.5) / 8))];
        double[] absolute = new double[3];
        double[] plain = new double[3];
        for (int input = 0; input < 3; input++)
        {
            for (int place = 0; place < 256; place++)
            {
                double[] x = new double[3];
                x[(input + 1) % 3] = level[place % 8];
                x[(input + 2) % 3] = level[place / 8 % 8];
                x[input] = level[place / 64];
                double before = Ishigami(x);
                x[input] = level[(place / 64) + 4];
                plain[input] += (Ishigami(x) - before) * 2 / 256;
                absolute[input] += Math.Abs(Ishigami(x) - before) * 2 / 256;
            }
        }

        int[] held = new int[3];
        int[] heldPlain = new int[3];
        for (ulong seed = 0; seed < Seeds; seed++)
        {
            var design = new MorrisDesign(seed, 60, 8);
            var screening = new MorrisScreening(design, inputs);
            screening.Add(0, Answers(design, inputs, Ishigami));
            for (int i = 0; i < 3; i++)
            {
                held[i] += screening.MeanOfAbsoluteIntervals(0.9)[i].Holds(absolute[i]) ? 1 : 0;
                heldPlain[i] += screening.MeanIntervals(0.9)[i].Holds(plain[i]) ? 1 : 0;
            }
        }

        // Half of all levels on, sin^2 is the same again: the second input has no effect at all here but rounding.
        Assert.True(absolute[1] < 1e-12);
        Assert.All(new[] { held[0], held[2], heldPlain[0], heldPlain[2] }, static count => Assert.InRange(count, 134, 155));
    }

    [Fact]
    public void Too_few_points_or_no_confidence_are_refused()
    {
        SobolIndices indices = Indices(Uniform(2, 0, 1), static x => x[0], new RandomDesign(1, 40));
        Assert.Contains("at least 64 points", Assert.Throws<InvalidOperationException>(() => indices.TotalIntervals(0.9)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("confidence", () => indices.TotalIntervals(1));
        var screening = new MorrisScreening(new MorrisDesign(1, 2), Uniform(2, 0, 1));
        Assert.Throws<InvalidOperationException>(() => screening.MeanIntervals(0.9));
        Assert.Throws<ArgumentOutOfRangeException>("confidence", () => screening.MeanIntervals(0));
    }

    private static double Ishigami(double[] x) =>
        Math.Sin(x[0]) + (7 * Math.Sin(x[1]) * Math.Sin(x[1])) + (0.1 * x[2] * x[2] * x[2] * x[2] * Math.Sin(x[0]));

    private static double G(double[] x)
    {
        double product = 1;
        for (int i = 0; i < x.Length; i++)
        {
            product *= (Math.Abs((4 * x[i]) - 2) + Weights[i]) / (1 + Weights[i]);
        }

        return product;
    }

    private static (double[] First, double[] Total) OfG()
    {
        double[] parts = [.. Weights.Select(static one => 1 / (3 * (1 + one) * (1 + one)))];
        double whole = parts.Aggregate(1.0, static (product, part) => product * (1 + part));
        return ([.. parts.Select(part => part / (whole - 1))], [.. parts.Select(part => part * whole / (1 + part) / (whole - 1))]);
    }

    private static void Within(double[,] held, double confidence, int least, int most)
    {
        foreach (double one in held)
        {
            Assert.True(one >= least && one <= most, $"{one} of {Seeds} intervals of {confidence} hold the truth: {string.Join(", ", held.Cast<double>())}");
        }
    }

    private static double[,] Coverage(
        SweepInputs inputs, Func<double[], double> model, double[] first, double[] total, Func<ulong, ShareDesign> points, double confidence = 0.9)
    {
        double[,] held = new double[2, inputs.Count];
        for (ulong seed = 0; seed < Seeds; seed++)
        {
            SobolIndices indices = Indices(inputs, model, points(seed));
            ValueList<ConfidenceInterval> ofFirst = indices.FirstOrderIntervals(confidence);
            ValueList<ConfidenceInterval> ofTotal = indices.TotalIntervals(confidence);
            for (int i = 0; i < inputs.Count; i++)
            {
                held[0, i] += ofFirst[i].Holds(first[i]) ? 1 : 0;
                held[1, i] += ofTotal[i].Holds(total[i]) ? 1 : 0;
            }
        }

        return held;
    }

    private static SobolIndices Indices(SweepInputs inputs, Func<double[], double> model, ShareDesign points)
    {
        var design = new PickFreezeDesign(points);
        var indices = new SobolIndices(design, inputs);
        indices.Add(0, Answers(design, inputs, model));
        return indices;
    }

    private static double[] Answers(Design design, SweepInputs inputs, Func<double[], double> model)
    {
        SweepBlock all = design.Make(inputs, 0, (int)design.RowsOf(inputs));
        double[] x = new double[inputs.Count];
        double[] answers = new double[all.Rows];
        for (int row = 0; row < answers.Length; row++)
        {
            for (int i = 0; i < x.Length; i++)
            {
                x[i] = all[i][row];
            }

            answers[row] = model(x);
        }

        return answers;
    }

    private static SweepInputs Uniform(int count, double low, double high) =>
        new(Enumerable.Range(1, count).Select(i => new SweepInput("x" + i, string.Empty, new UniformValues(low, high))));
}
