using FsCheck.Xunit;
using MathNet.Numerics.LinearAlgebra;

namespace SacrificialTape.Tests.Contact;

/// <summary>The solver of nets of conductances: by hand, and against the dense solver of a numerical library.</summary>
[Properties(MaxTest = 100)]
public sealed class NetOfConductances
{
    // 1 A walks from the last node through 1/2 S, 1/4 S and 1/8 S: 8 V over the steel, then 4 V, then 2 V more.
    [Theory]
    [InlineData(0, 1, 2)]
    [InlineData(0, 2, 1)]
    [InlineData(1, 0, 2)]
    [InlineData(1, 2, 0)]
    [InlineData(2, 0, 1)]
    [InlineData(2, 1, 0)]
    public void A_chain_adds_up(int low, int middle, int high)
    {
        var toSteel = new double[3];
        toSteel[low] = 0.125;
        var currents = new double[3];
        currents[high] = 1;
        var volts = new double[3];
        double missed = SkylineKernel.Solve(toSteel, [new(low, middle, 0.25), new(high, middle, 0.5)], currents, volts);
        Near.Equal(8, volts[low], 1e-14);
        Near.Equal(12, volts[middle], 1e-14);
        Near.Equal(14, volts[high], 1e-14);
        Assert.InRange(missed, 0, 1e-14);
    }

    [Property]
    public void It_is_what_a_dense_solver_finds(int seed)
    {
        var random = new Random(seed);
        (double[] toSteel, List<NetLink> links) = Net(random);
        int count = toSteel.Length;
        double[] currents = [.. toSteel.Select(_ => random.NextDouble() - 0.3)];
        var volts = new double[count];
        Assert.InRange(SkylineKernel.Solve(toSteel, links, currents, volts), 0, 1e-12);

        Matrix<double> matrix = Matrix<double>.Build.DenseOfDiagonalArray(toSteel);
        foreach (NetLink link in links)
        {
            matrix[link.One, link.One] += link.Siemens;
            matrix[link.Other, link.Other] += link.Siemens;
            matrix[link.One, link.Other] -= link.Siemens;
            matrix[link.Other, link.One] -= link.Siemens;
        }

        Vector<double> dense = matrix.Solve(Vector<double>.Build.Dense(currents));
        for (int i = 0; i < count; i++)
        {
            Near.Equal(dense[i], volts[i], 1e-9, absolute: 1e-9);
        }
    }

    [Fact]
    public void What_is_missed_is_the_worst_balance_over_all_current()
    {
        // Out of the first go 2 x 1 and 3 x (1 - 2), of the second 1 x 2 and 3 x (2 - 1): 2 A and 1 A are left of 7.
        Assert.Equal(2.0 / 7, SkylineKernel.Missed([2, 1], [new(0, 1, 3)], [1, 6], [1, 2]));
        Assert.Equal(2.0 / 7, SkylineKernel.Missed([2, 1], [new(1, 0, 3)], [1, 6], [1, 2]));
        Assert.Equal(0.5, SkylineKernel.Missed([2, 1], [new(0, 1, 3)], [-5, 3], [1, 2]));
        Assert.Equal(0, SkylineKernel.Missed([2, 1], [], [0, 0], [0, 0]));
    }

    [Fact]
    public void A_part_that_hangs_in_the_air_is_refused() => Assert.Contains(
        "does not reach the steel",
        Assert.Throws<InvalidOperationException>(
            static () => SkylineKernel.Solve([1, 0, 0], [new(1, 2, 1)], [1, 1, 1], new double[3])).Message,
        StringComparison.Ordinal);

    [Property]
    public void Renumbering_names_every_node_once_and_keeps_neighbours_near(int seed, byte length, byte width)
    {
        // A ladder so many rungs wide, its nodes mixed: levels hold at most one node of each row, so neighbours stand less
        // than two levels apart (Cuthill and McKee). Beside it a chain and nodes alone.
        var random = new Random(seed);
        int rows = 2 + (width % 4);
        int columns = (3 * rows) + (length % 20);
        int chain = 10;
        int count = (rows * columns) + chain + 3;
        int[] mixed = [.. Enumerable.Range(0, count)];
        random.Shuffle(mixed);
        var links = new List<NetLink>();
        for (int i = 0; i < rows * columns; i++)
        {
            if ((i + 1) % rows != 0)
            {
                links.Add(new(mixed[i], mixed[i + 1], 1));
            }

            if (i + rows < rows * columns)
            {
                links.Add(new(mixed[i + rows], mixed[i], 1));
            }
        }

        int ladder = links.Count;
        for (int i = rows * columns; i < (rows * columns) + chain - 1; i++)
        {
            links.Add(new(mixed[i], mixed[i + 1], 1));
        }

        int[] place = SkylineKernel.Renumbered(count, SkylineKernel.Neighbours(count, links));
        Assert.Equal(Enumerable.Range(0, count), place.Order());
        Assert.All(links.Take(ladder), link => Assert.InRange(Math.Abs(place[link.One] - place[link.Other]), 1, (2 * rows) - 1));
        Assert.All(links.Skip(ladder), link => Assert.Equal(1, Math.Abs(place[link.One] - place[link.Other])));
    }

    [Fact]
    public void Back_to_front_the_hub_of_a_star_stands_behind_its_leaves()
    {
        // From a leaf on: leaf, hub, the other leaves. Back to front every leaf but one has no neighbour before it.
        List<NetLink> star = [.. Enumerable.Range(1, 8).Select(static leaf => new NetLink(0, leaf, 1))];
        int[] place = SkylineKernel.Renumbered(9, SkylineKernel.Neighbours(9, star));
        Assert.Equal(7, place[0]);
    }

    [Fact]
    public void Two_links_between_the_same_nodes_make_one_neighbour() =>
        Assert.Equal([[1], [0]], SkylineKernel.Neighbours(2, [new(0, 1, 1), new(1, 0, 2)]));

    // Nodes in a few clumps, some alone; the first of each clump reaches the steel, others may.
    private static (double[] ToSteel, List<NetLink> Links) Net(Random random)
    {
        int count = random.Next(1, 40);
        var toSteel = new double[count];
        var links = new List<NetLink>();
        for (int i = 0; i < count; i++)
        {
            int start = i - (i % 8);
            toSteel[i] = i == start || random.Next(5) == 0 ? 0.1 + random.NextDouble() : 0;
            if (i > start)
            {
                links.Add(new(i, random.Next(start, i), 0.1 + random.NextDouble()));
                links.Add(new(random.Next(start, i), i, 0.1 + random.NextDouble()));
            }
        }

        return (toSteel, links);
    }
}
