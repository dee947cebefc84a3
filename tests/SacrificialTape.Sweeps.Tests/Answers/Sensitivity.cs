using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>Sobol indices and Morris screening against functions whose answers are known in closed form.</summary>
public sealed class Sensitivity
{
    // Ishigami and Homma (1990) with a = 7, b = 0.1, inputs uniform from -pi to pi: f = sin x1 + a sin^2 x2 + b x3^4 sin x1.
    // Integrating by hand: V1 = (1 + b pi^4/5)^2 / 2, V2 = a^2/8, V13 = b^2 pi^8 (1/18 - 1/50), all others 0;
    // so 0.3139, 0.4424, 0 and in total 0.5576, 0.4424, 0.2437, the figures usually quoted (recalled).
    [Fact]
    public void Of_the_Ishigami_function()
    {
        const double A = 7;
        const double B = 0.1;
        double v1 = Math.Pow(1 + (B * Math.Pow(Math.PI, 4) / 5), 2) / 2;
        double v2 = A * A / 8;
        double v13 = B * B * Math.Pow(Math.PI, 8) * ((1.0 / 18) - (1.0 / 50));
        double v = v1 + v2 + v13;
        Assert.Equal([0.3139, 0.4424, 0.5576, 0.2437], new[] { v1 / v, v2 / v, (v1 + v13) / v, v13 / v }.Select(static one => Math.Round(one, 4)));

        SobolIndices indices = Indices(
            Uniform(3, -Math.PI, Math.PI),
            1 << 14,
            static x => Math.Sin(x[0]) + (A * Math.Sin(x[1]) * Math.Sin(x[1])) + (B * x[2] * x[2] * x[2] * x[2] * Math.Sin(x[0])));
        Close([v1 / v, v2 / v, 0], indices.FirstOrder, 5e-3);
        Close([(v1 + v13) / v, v2 / v, v13 / v], indices.Total, 5e-3);
        Assert.Equal(v, indices.Variance, 0.05);
    }

    // Sobol's g-function, the product of (|4 x - 2| + a)/(1 + a): V_i = 1/(3 (1 + a_i)^2), V = prod (1 + V_i) - 1, total of i is
    // V_i prod (1 + V_j) over j other than i. The formulas are printed in the documentation of gsa-module (test gallery, G*, with
    // alpha 1 and no shift), and follow by integrating.
    [Fact]
    public void Of_the_g_function()
    {
        double[] a = [0, 1, 4.5, 9, 99, 99, 99, 99];
        double[] parts = [.. a.Select(static one => 1 / (3 * (1 + one) * (1 + one)))];
        double whole = parts.Aggregate(1.0, static (product, part) => product * (1 + part));
        double v = whole - 1;
        SobolIndices indices = Indices(
            Uniform(8, 0, 1),
            1 << 14,
            x => a.Select((one, i) => (Math.Abs((4 * x[i]) - 2) + one) / (1 + one)).Aggregate(1.0, static (product, part) => product * part));
        Close([.. parts.Select(part => part / v)], indices.FirstOrder, 5e-3);
        Close([.. parts.Select(part => part * whole / (1 + part) / v)], indices.Total, 5e-3);
    }

    // A sum of independent inputs: each causes the share c^2 sigma^2 of the variance, alone as in total.
    [Fact]
    public void Of_a_sum_of_normal_inputs()
    {
        var inputs = new SweepInputs([new("a", "", new NormalValues(5, 1)), new("b", "", new NormalValues(-2, 3))]);
        SobolIndices indices = Indices(inputs, 1 << 12, static x => (2 * x[0]) + x[1]);
        Close([4.0 / 13, 9.0 / 13], indices.FirstOrder, 5e-3);
        Close([4.0 / 13, 9.0 / 13], indices.Total, 5e-3);
    }

    [Fact]
    public void A_point_with_a_row_that_is_no_number_is_left_out_and_counted()
    {
        var indices = new SobolIndices(new PickFreezeDesign(new RandomDesign(1, 3)), Uniform(2, 0, 1));
        indices.Add(0, [1, 2, 3, 4, 1, double.NaN, 3, 4, 5, 1, 2, 9]);
        Assert.Equal((2, 1), (indices.Points, indices.LeftOut));
        Assert.Throws<ArgumentException>("answers", () => indices.Add(0, [1, 2, 3]));
        Assert.Throws<ArgumentException>("answers", () => indices.Add(1, [1, 2, 3, 4]));
        Assert.Contains("has 12 rows", Assert.Throws<ArgumentException>("answers", () => indices.Add(12, [1, 2, 3, 4])).Message, StringComparison.Ordinal);
    }

    // By Morris: over a line of slope c in the share every effect is c; over a product of two it is the other one.
    [Fact]
    public void Morris_effects_of_a_line_are_its_slopes()
    {
        SweepInputs inputs = Uniform(3, 0, 1);
        var design = new MorrisDesign(3, 40, 4);
        var screening = new MorrisScreening(design, inputs);
        screening.Add(0, Answers(design, inputs, static x => (3 * x[0]) - (5 * x[1]) + 0.25));
        Close([3, -5, 0], screening.Mean, 1e-12);
        Close([3, 5, 0], screening.MeanOfAbsolute, 1e-12);
        Close([0, 0, 0], screening.Deviation, 1e-6);
    }

    [Fact]
    public void Morris_effects_of_inputs_that_act_together_scatter()
    {
        SweepInputs inputs = Uniform(3, -1, 1);
        var design = new MorrisDesign(4, 4000, 4);
        var screening = new MorrisScreening(design, inputs);
        screening.Add(0, Answers(design, inputs, static x => (x[0] * x[1]) + (0.1 * x[2])));

        // Shares 1/8, 3/8, 5/8, 7/8 are values -3/4, -1/4, 1/4, 3/4; the slope in the share is twice the other input. A mean of
        // 4000 effects has a standard error of 0.018.
        Close([0, 0, 0.2], screening.Mean, 0.08);
        Close([1, 1, 0.2], screening.MeanOfAbsolute, 0.05);
        Close([2 * Math.Sqrt(0.3125), 2 * Math.Sqrt(0.3125), 0], screening.Deviation, 0.05);
    }

    private static SobolIndices Indices(SweepInputs inputs, int points, Func<double[], double> model)
    {
        var design = new PickFreezeDesign(new SobolDesign(2024, points));
        var indices = new SobolIndices(design, inputs);
        indices.Add(0, Answers(design, inputs, model));
        return indices;
    }

    private static double[] Answers(Design design, SweepInputs inputs, Func<double[], double> model)
    {
        SweepBlock all = design.Make(inputs, 0, (int)design.RowsOf(inputs));
        return [.. Enumerable.Range(0, all.Rows).Select(row => model([.. Enumerable.Range(0, inputs.Count).Select(i => all[i][row])]))];
    }

    private static SweepInputs Uniform(int count, double low, double high) =>
        new(Enumerable.Range(1, count).Select(i => new SweepInput("x" + i, string.Empty, new UniformValues(low, high))));

    private static void Close(double[] expected, ValueList<double> actual, double within)
    {
        Assert.Equal(expected.Length, actual.Count);
        for (int i = 0; i < expected.Length; i++)
        {
            Assert.True(Math.Abs(expected[i] - actual[i]) <= within, $"{i}: expected {expected[i]}, got {actual[i]}");
        }
    }
}
