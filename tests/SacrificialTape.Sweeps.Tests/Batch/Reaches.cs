using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Tests.Batch;

/// <summary>Reaches by rows are those of the scalar form.</summary>
public sealed class Reaches
{
    [Fact]
    public void Rows_of_a_grid_agree_with_the_scalar_form()
    {
        double[] endless = new double[1];
        double[] gap = new double[1];
        int rows = 0;
        for (double film = 1; film <= 1000; film *= 3.1)
        {
            for (double ohm = 0.01; ohm < 1000; ohm *= 4.3)
            {
                foreach (double edge in new[] { -1.02, -0.98, -0.8500001, -0.79, -0.77 })
                {
                    foreach (double wanted in new[] { -0.85, -0.76, -0.7, -0.650001 })
                    {
                        ReachRows.OnEndlessSteel(0.5, film, ohm, edge, -0.65, wanted, endless);
                        ReachRows.ToMiddleOfGap(0.5, film, ohm, edge, -0.65, wanted, gap);
                        if (edge >= wanted)
                        {
                            Assert.True(double.IsNaN(endless[0]) && double.IsNaN(gap[0]));
                            continue;
                        }

                        rows++;
                        double decay = ReachKernel.DecayMm(0.5, film, ohm);
                        Ulps.AtMost(4, ReachKernel.HalfSpaceReach(decay, edge, -0.65, wanted, default(NoSteps)), endless[0], $"edge {edge}, wanted {wanted}");
                        Ulps.AtMost(8, ReachKernel.HalfGapReach(decay, edge, -0.65, wanted, default(NoSteps)), gap[0], $"edge {edge}, wanted {wanted}");
                    }
                }
            }
        }

        Assert.True(rows > 500);
    }

    [Theory]
    [InlineData(0, 100, 1, -1, -0.65, -0.85)]
    [InlineData(double.PositiveInfinity, 100, 1, -1, -0.65, -0.85)]
    [InlineData(0.5, 0, 1, -1, -0.65, -0.85)]
    [InlineData(0.5, 1001, 1, -1, -0.65, -0.85)]
    [InlineData(0.5, 100, double.PositiveInfinity, -1, -0.65, -0.85)]
    [InlineData(0.5, 100, 1, -4, -0.65, -0.85)]
    [InlineData(0.5, 100, 1, -0.85, -0.65, -0.85)]
    [InlineData(0.5, 100, 1, -1, -0.85, -0.85)]
    [InlineData(0.5, 100, 0, -1, -0.65, -0.85)]
    [InlineData(0.5, 100, 1, -1, -0.9, -0.85)]
    [InlineData(0.5, 100, 1, -0.8, -0.65, -0.85)]
    [InlineData(0.5, 100, 1, double.NaN, -0.65, -0.85)]
    public void What_the_typed_form_refuses_is_not_a_number(double siemens, double film, double ohm, double edge, double rest, double wanted)
    {
        double[] reach = new double[1];
        ReachRows.OnEndlessSteel(siemens, film, ohm, edge, rest, wanted, reach);
        Assert.True(double.IsNaN(reach[0]));
        ReachRows.ToMiddleOfGap(siemens, film, ohm, edge, rest, wanted, reach);
        Assert.True(double.IsNaN(reach[0]));
    }

    [Fact]
    public void The_thickest_film_that_the_typed_form_takes_is_a_number()
    {
        double[] reach = new double[1];
        ReachRows.OnEndlessSteel(0.5, ThinFilm.ThickestUm, 1, -1, -0.65, -0.85, reach);
        double decay = ReachKernel.DecayMm(0.5, ThinFilm.ThickestUm, 1);
        Ulps.AtMost(4, ReachKernel.HalfSpaceReach(decay, -1, -0.65, -0.85, default(NoSteps)), reach[0], "the thickest film");
    }
}
