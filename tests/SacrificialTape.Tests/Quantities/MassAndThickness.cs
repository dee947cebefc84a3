namespace SacrificialTape.Tests.Quantities;

/// <summary>A loss by thickness and by mass, on a plate weighed by hand.</summary>
public sealed class MassAndThickness
{
    // One square metre that loses 2 um has lost 2 cm3: of zinc 14.28 g.
    [Theory]
    [InlineData(2, 7140, 14.28)]
    [InlineData(0.5, 7860, 3.93)]
    [InlineData(0, 7140, 0)]
    public void A_square_metre_loses_its_thickness_times_its_density(double micrometers, double density, double grams)
    {
        Density of = Density.FromKilogramsPerCubicMeter(density);
        Near.Equal(grams, CorrosionRate.FromMicrometersPerYear(micrometers).ToMassLoss(of).GramsPerSquareMeterYear, 1e-15);
        Near.Equal(micrometers, MassLossRate.FromGramsPerSquareMeterYear(grams).ToCorrosionRate(of).MicrometersPerYear, 1e-15);
    }
}
