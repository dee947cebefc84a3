using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Grids;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>A summary that reads rows in a certain order is never filled from rows of another one: the shares would be wrong without a word.</summary>
public sealed class RowsForSummaries
{
    private static readonly SweepInputs Two = new([new("x", string.Empty, new UniformValues(0, 1)), new("y", "mm", new UniformValues(0, 2))]);

    private static readonly PickFreezeDesign Pick = new(new SobolDesign(1, 256));

    private static readonly MorrisDesign Paths = new(1, 256);

    public static TheoryData<string> Others => ["random", "hypercube", "sobol", "other points", "other seed", "fewer points", "paths"];

    [Theory]
    [MemberData(nameof(Others))]
    public void A_study_of_another_design_refuses_Sobol_indices_and_names_both(string name)
    {
        Design other = Other(name);
        Study study = Of(other, Two);
        string message = Assert.Throws<ArgumentException>("design", () => study.Run(
            [new("answer", new SobolIndices(Pick, Two))], cancellation: TestContext.Current.CancellationToken)).Message;
        Assert.Contains($"'{Pick}'", message, StringComparison.Ordinal);
        Assert.Contains($"'{other}'", message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("design", () => study.Check([new("answer", new SobolIndices(Pick, Two))]));
        Assert.Throws<ArgumentException>("design", () => study.Summarize("answer", new SobolIndices(Pick, Two), cancellation: TestContext.Current.CancellationToken));
    }

    [Fact]
    public void A_study_of_another_design_refuses_Morris_screening()
    {
        var screening = new MorrisScreening(Paths, Two);
        foreach (Design other in new Design[] { new RandomDesign(1, 768), new MorrisDesign(2, 256), new MorrisDesign(1, 255), new MorrisDesign(1, 256, 6), Pick })
        {
            Assert.Throws<ArgumentException>("design", () => Of(other, Two).Check([new("answer", screening)]));
        }

        Of(new MorrisDesign(1, 256), Two).Check([new("answer", screening)]);
    }

    [Fact]
    public void A_factored_study_refuses_both()
    {
        var study = new FactoredStudy(
            [new(new SweepInput("x", "", new ListedValues(1, 2))), new(new SweepInput("y", "", new ListedValues(1, 2)))],
            [new(["x", "y"], ["answer"], static (_, answers) => answers["answer"].Fill(1))]);
        foreach (Summary summary in new Summary[] { new SobolIndices(Pick, Two), new MorrisScreening(Paths, Two) })
        {
            Assert.Contains("'full grid'", Assert.Throws<ArgumentException>("design", () => study.Run(
                [new("answer", summary)], cancellation: TestContext.Current.CancellationToken)).Message, StringComparison.Ordinal);
        }
    }

    // As many inputs, but of another name, unit, spread, or in another order.
    [Fact]
    public void Other_inputs_of_the_same_count_are_refused()
    {
        foreach (SweepInputs other in new SweepInputs[]
        {
            new([Two.All[1], Two.All[0]]),
            new([Two.All[0], new("z", "mm", new UniformValues(0, 2))]),
            new([Two.All[0], new("y", "m", new UniformValues(0, 2))]),
            new([Two.All[0], new("y", "mm", new UniformValues(0, 3))]),
        })
        {
            Assert.Throws<ArgumentException>("inputs", () => Of(Pick, Two).Check([new("answer", new SobolIndices(Pick, other))]));
            Assert.Throws<ArgumentException>("inputs", () => Of(Paths, Two).Check([new("answer", new MorrisScreening(Paths, other))]));
            Assert.Throws<ArgumentException>("other", () => new SobolIndices(Pick, Two).Join(new SobolIndices(Pick, other)));
        }

        Assert.Throws<ArgumentException>("other", () => new SobolIndices(Pick, Two).Join(new SobolIndices(new PickFreezeDesign(new SobolDesign(2, 256)), Two)));
    }

    // x + y with y over twice the range of x: shares of one fifth and four fifths, alone and in all.
    [Fact]
    public void An_equal_design_made_anew_is_the_same_one()
    {
        var indices = new SobolIndices(new PickFreezeDesign(new SobolDesign(1, 256)), new SweepInputs([new("x", "", new UniformValues(0, 1)), new("y", "mm", new UniformValues(0, 2))]));
        SobolIndices filled = Of(Pick, Two).Summarize("answer", indices, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal((0, 256), (indices.Points, filled.Points));
        Assert.Equal(0.2, filled.Total[0], 0.01);
        Assert.Equal(0.8, filled.FirstOrder[1], 0.01);
    }

    [Fact]
    public void Inputs_that_go_together_are_refused_at_once()
    {
        var together = new SweepInputs(Two.All, [new("x", "y", 0.5)]);
        Assert.Contains("need independent inputs", Assert.Throws<ArgumentException>(() => new SobolIndices(Pick, together)).Message, StringComparison.Ordinal);
        Assert.Contains("needs independent inputs", Assert.Throws<ArgumentException>(() => new MorrisScreening(Paths, together)).Message, StringComparison.Ordinal);
    }

    private static Design Other(string name) => name switch
    {
        "random" => new RandomDesign(1, 1024),
        "hypercube" => new LatinHypercubeDesign(1, 1024),
        "sobol" => new SobolDesign(1, 1024),
        "other points" => new PickFreezeDesign(new RandomDesign(1, 256)),
        "other seed" => new PickFreezeDesign(new SobolDesign(2, 256)),
        "fewer points" => new PickFreezeDesign(new SobolDesign(1, 255)),
        _ => new MorrisDesign(1, 256),
    };

    private static Study Of(Design design, SweepInputs inputs) => new(inputs, design, ["answer"], static (rows, answers) =>
    {
        for (int row = 0; row < rows.Rows; row++)
        {
            answers[0][row] = rows[0][row] + rows[1][row];
        }
    });
}
