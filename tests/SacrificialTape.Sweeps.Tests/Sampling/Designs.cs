using FsCheck;
using FsCheck.Xunit;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Sampling;

/// <summary>What each design promises of its rows.</summary>
public sealed class Designs
{
    private static readonly SweepInputs Three = Inputs(new UniformValues(0, 1), new NormalValues(5, 2), new LogNormalValues(3, 0.4));

    public static TheoryData<string> Names => ["random", "hypercube", "sobol", "pick", "morris", "grid"];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_slice_is_that_part_of_the_whole_bit_for_bit(string name)
    {
        Design design = Of(name, 11, 257);
        SweepInputs inputs = name == "grid" ? Inputs(new RangedValues(1, 2, 7), new ListedValues(3, 1, 2), new RangedValues(1, 100, 5, RangeSpacing.Logarithmic)) : Three;
        long rows = design.RowsOf(inputs);
        SweepBlock whole = design.Make(inputs, 0, (int)rows);
        foreach (int length in new[] { 1, 2, 3, 64, 100 })
        {
            for (long first = 0; first < rows; first += length)
            {
                SweepBlock slice = design.Make(inputs, first, (int)Math.Min(length, rows - first));
                Assert.Equal(first, slice.FirstRow);
                for (int i = 0; i < 3; i++)
                {
                    Assert.Equal(whole[i].Slice((int)first, slice.Rows).ToArray(), slice[i].ToArray());
                }
            }
        }
    }

    [Theory]
    [InlineData("random")]
    [InlineData("hypercube")]
    [InlineData("sobol")]
    [InlineData("pick")]
    [InlineData("morris")]
    public void The_seed_alone_decides(string name)
    {
        double[] one = Of(name, 5, 64).Make(Three, 0, 60)[1].ToArray();
        Assert.Equal(one, Of(name, 5, 64).Make(Three, 0, 60)["b"].ToArray());
        Assert.NotEqual(one, Of(name, 6, 64).Make(Three, 0, 60)[1].ToArray());
    }

    [Fact]
    public void A_grid_takes_every_combination_once_the_last_input_first()
    {
        SweepInputs inputs = Inputs(new ListedValues(7, 5), new FixedValue(4), new RangedValues(0, 1, 3));
        SweepBlock all = new GridDesign().Make(inputs, 0, 6);
        Assert.Equal([7, 7, 7, 5, 5, 5], all[0].ToArray());
        Assert.Equal([4, 4, 4, 4, 4, 4], all[1].ToArray());
        Assert.Equal([0, 0.5, 1, 0, 0.5, 1], all[2].ToArray());
        Assert.Equal([1, 10, 100], new GridDesign().Make(Inputs(new RangedValues(1, 100, 3, RangeSpacing.Logarithmic)), 0, 3)[0].ToArray(), (x, y) => Math.Abs(x - y) < 1e-13 * y);
    }

    [Fact]
    public void A_grid_of_a_distribution_is_refused() => Assert.Contains(
        "needs levels, and 'a: uniform, 0 to 1' has none",
        Assert.Throws<ArgumentException>("inputs", static () => new GridDesign().RowsOf(Inputs(new UniformValues(0, 1)))).Message,
        StringComparison.Ordinal);

    [Property(MaxTest = 60)]
    public void A_hypercube_takes_every_share_once(PositiveInt some, int seed)
    {
        int rows = 1 + (some.Get * 37 % 1500);
        SweepBlock all = new LatinHypercubeDesign((ulong)seed, rows).Make(Inputs(new UniformValues(0, 1), new UniformValues(0, 1)), 0, rows);
        for (int i = 0; i < 2; i++)
        {
            Assert.Equal(Enumerable.Range(0, rows), all[i].ToArray().Select(share => (int)(share * rows)).Order());
        }
    }

    [Fact]
    public void A_permutation_sends_each_place_anywhere_with_equal_chance()
    {
        // 6 places, 6000 seeds: chi squared of 25 degrees of freedom stays below 60 (1 in 10 000).
        int[,] counts = new int[6, 6];
        for (ulong seed = 0; seed < 6000; seed++)
        {
            for (int place = 0; place < 6; place++)
            {
                counts[place, PermutationKernel.At(seed, 3, 6, place)]++;
            }
        }

        double chi = counts.Cast<int>().Sum(static count => (count - 1000.0) * (count - 1000.0) / 1000.0);
        Assert.True(chi < 60, $"chi squared {chi}");
    }

    // In a random order neighbours, and the same place of two columns or of two seeds, have nothing in common: a correlation of
    // 50 orders of 1000 has a standard error of 0.0045.
    [Fact]
    public void Places_of_an_order_have_nothing_in_common()
    {
        double neighbours = 0;
        double columns = 0;
        double seeds = 0;
        for (ulong seed = 0; seed < 50; seed++)
        {
            double[] one = Order(seed, 0);
            neighbours += Product(one[1..], one[..^1]);
            columns += Product(one, Order(seed, 1));
            seeds += Product(one, Order(seed + 1, 0));
        }

        Assert.All(new[] { neighbours, columns, seeds }, static sum => Assert.InRange(sum / 50, -0.02, 0.02));

        static double[] Order(ulong seed, uint column) =>
            [.. Enumerable.Range(0, 1000).Select(row => (PermutationKernel.At(seed, column, 1000, row) - 499.5) / 288.675)];

        static double Product(double[] one, double[] other) => one.Zip(other, static (a, b) => a * b).Average();
    }

    [Fact]
    public void Of_a_large_order_any_place_is_found_alone_and_none_twice()
    {
        const long Rows = 3_000_000_001;
        var seen = new HashSet<long>();
        for (long row = 0; row < 20_000; row++)
        {
            long place = PermutationKernel.At(9, 0, Rows, row * 149_999);
            Assert.InRange(place, 0, Rows - 1);
            Assert.True(seen.Add(place));
        }
    }

    // Of 2^k points each of 2^k equal shares holds one, in every dimension, and so after scrambling.
    [Theory]
    [InlineData(1UL)]
    [InlineData(77UL)]
    public void A_Sobol_sequence_fills_every_share_of_a_power_of_two(ulong seed)
    {
        var design = new SobolDesign(seed, 1024);
        double[] shares = new double[1024];
        for (int column = 0; column < 32; column++)
        {
            design.Shares(column, 0, shares);
            Assert.Equal(Enumerable.Range(0, 1024), shares.Select(static share => (int)(share * 1024)).Order());
        }
    }

    // The first two dimensions make a (0,m,2)-net: every elementary box of area 1/2^m holds one of 2^m points.
    [Fact]
    public void Two_dimensions_of_a_scrambled_Sobol_sequence_are_a_net()
    {
        var design = new SobolDesign(4242, 256);
        double[] x = new double[256];
        double[] y = new double[256];
        design.Shares(0, 0, x);
        design.Shares(1, 0, y);
        for (int k = 0; k <= 8; k++)
        {
            int across = 1 << k;
            int up = 256 / across;
            Assert.Equal(256, Enumerable.Range(0, 256).Select(i => ((int)(x[i] * across), (int)(y[i] * up))).Distinct().Count());
        }
    }

    [Fact]
    public void A_Sobol_sequence_integrates_a_smooth_function_far_better_than_random_rows()
    {
        // Integral of the product of 1 + (x - 1/2)/2 over five dimensions is 1.
        SweepInputs five = Inputs([.. Enumerable.Repeat(new UniformValues(0, 1), 5)]);
        double sobol = Enumerable.Range(1, 8).Average(seed => Math.Abs(Mean(new SobolDesign((ulong)seed, 4096)) - 1));
        double random = Enumerable.Range(1, 8).Average(seed => Math.Abs(Mean(new RandomDesign((ulong)seed, 4096)) - 1));
        Assert.True(sobol < random / 20, $"{sobol} against {random}");

        double Mean(Design design)
        {
            SweepBlock all = design.Make(five, 0, 4096);
            double sum = 0;
            for (int row = 0; row < all.Rows; row++)
            {
                double product = 1;
                for (int i = 0; i < 5; i++)
                {
                    product *= 1 + ((all[i][row] - 0.5) / 2);
                }

                sum += product;
            }

            return sum / all.Rows;
        }
    }

    [Fact]
    public void A_Sobol_sequence_has_32_inputs_and_picks_16()
    {
        SweepInputs many = Inputs([.. Enumerable.Repeat(new UniformValues(0, 1), 33)]);
        Assert.Contains("at most 32 inputs, and there are 33", Assert.Throws<ArgumentException>(() => new SobolDesign(1, 8).RowsOf(many)).Message, StringComparison.Ordinal);
        Assert.Contains("at most 16 inputs", Assert.Throws<ArgumentException>(() => new PickFreezeDesign(new SobolDesign(1, 8)).RowsOf(many)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Picked_rows_share_all_inputs_but_one_with_A_and_that_one_with_B()
    {
        var design = new PickFreezeDesign(new RandomDesign(3, 10));
        SweepBlock all = design.Make(Three, 0, 50);
        for (int point = 0; point < 10; point++)
        {
            for (int i = 0; i < 3; i++)
            {
                Assert.NotEqual(all[i][point * 5], all[i][(point * 5) + 1]);
                for (int kind = 0; kind < 3; kind++)
                {
                    Assert.Equal(all[i][(point * 5) + (kind == i ? 1 : 0)], all[i][(point * 5) + 2 + kind]);
                }
            }
        }
    }

    [Fact]
    public void A_Morris_path_jumps_with_each_input_once_by_half_of_its_levels()
    {
        var design = new MorrisDesign(8, 20, 6);
        SweepInputs inputs = Inputs(new UniformValues(0, 6), new UniformValues(0, 6), new UniformValues(0, 6));
        SweepBlock all = design.Make(inputs, 0, 80);
        int ups = 0;
        for (int path = 0; path < 20; path++)
        {
            int[] jumps = new int[3];
            for (int step = 0; step < 3; step++)
            {
                for (int i = 0; i < 3; i++)
                {
                    double jump = all[i][(path * 4) + step + 1] - all[i][(path * 4) + step];
                    Assert.True(jump == 0 || Math.Abs(Math.Abs(jump) - 3) < 1e-12, $"{jump}");
                    jumps[i] += jump == 0 ? 0 : 1;
                    ups += jump > 0 ? 1 : 0;
                }
            }

            Assert.Equal([1, 1, 1], jumps);
        }

        Assert.InRange(ups, 15, 45);
    }

    [Fact]
    public void Rows_that_there_are_not_are_refused()
    {
        Assert.Contains("rows 0 to 9", Assert.Throws<ArgumentOutOfRangeException>("firstRow", static () => new RandomDesign(1, 10).Make(Three, 11, 0)).Message, StringComparison.Ordinal);
        Assert.Contains("From row 8 on the sweep has 2 rows", Assert.Throws<ArgumentOutOfRangeException>("rows", static () => new RandomDesign(1, 10).Make(Three, 8, 3)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("rows", static () => new RandomDesign(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>("levels", static () => new MorrisDesign(1, 5, 5));
        Assert.Throws<ArgumentException>("points", static () => new PickFreezeDesign(new MorrisDesign(1, 5)));
    }

    private static SweepInputs Inputs(params InputValues[] values) =>
        new(values.Select(static (one, i) => new SweepInput(i < 26 ? ((char)('a' + i)).ToString() : "input " + i, string.Empty, one)));

    private static Design Of(string name, ulong seed, int rows) => name switch
    {
        "random" => new RandomDesign(seed, rows),
        "hypercube" => new LatinHypercubeDesign(seed, rows),
        "sobol" => new SobolDesign(seed, rows),
        "pick" => new PickFreezeDesign(new SobolDesign(seed, rows)),
        "morris" => new MorrisDesign(seed, rows),
        _ => new GridDesign(),
    };
}
