using SacrificialTape.Provenance;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.TakeOff;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Sweeps.Tests.Batch;

/// <summary>Spirals by rows are those of the typed form, bit for bit, and not a number where that one refuses.</summary>
public sealed class Spirals
{
    public static TheoryData<LapConvention> Conventions => [.. Enum.GetValues<LapConvention>()];

    [Theory]
    [MemberData(nameof(Conventions))]
    public void Rows_of_a_grid_are_the_typed_form_bit_for_bit(LapConvention convention)
    {
        var diameters = new List<double>();
        var widths = new List<double>();
        var values = new List<double>();
        foreach (double diameter in new[] { 0.5, 1, 6, 21.3, 31.830988618379067, 60.3, 168.3, 1016, 100_000, 100_001 })
        {
            foreach (double width in new[] { 0.9, 1, 25, 50, 100, 189.4, 300, 2000, 2001 })
            {
                foreach (double value in new[] { -1, 0, 1e-9, 5, 10, 20, 50, 99.999999999, 100, 120, 189, 250, double.NaN })
                {
                    diameters.Add(diameter);
                    widths.Add(width);
                    values.Add(value);
                }
            }
        }

        double[] angle = new double[values.Count];
        double[] advance = new double[values.Count];
        double[] lap = new double[values.Count];
        double[] layers = new double[values.Count];
        double[] strip = new double[values.Count];
        double[] d = [.. diameters];
        double[] w = [.. widths];
        double[] v = [.. values];
        SpiralRows.Angle(d, w, convention, v, angle);
        SpiralRows.Advance(d, w, convention, v, advance);
        SpiralRows.TrueLap(d, w, convention, v, lap);
        SpiralRows.LayersOnAverage(d, w, convention, v, layers);
        SpiralRows.StripPerMeter(d, w, convention, v, strip);
        int solved = 0;
        for (int i = 0; i < v.Length; i++)
        {
            if (Typed(d[i], w[i], convention, v[i]) is not { } spiral)
            {
                Assert.True(double.IsNaN(angle[i]) && double.IsNaN(advance[i]) && double.IsNaN(lap[i]), $"D {d[i]}, w {w[i]}, {v[i]}: not refused");
                Assert.True(double.IsNaN(layers[i]) && double.IsNaN(strip[i]));
                continue;
            }

            solved++;
            SpiralSolution solution = spiral.Solution;
            Assert.Equal(solution.AngleDegrees, angle[i]);
            Assert.Equal(solution.AdvanceMm, advance[i]);
            Assert.Equal(solution.TrueLapMm, lap[i]);
            Assert.Equal(solution.LayersOnAverage, layers[i]);
            Assert.Equal(ChartKernel.StripPerMeterMm(solution, default(NoSteps)), strip[i]);
        }

        Assert.True(solved > 100, $"Only {solved} spirals were solved.");
    }

    [Fact]
    public void No_such_convention_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(
        "convention", static () => SpiralRows.Angle(60.3, 100, (LapConvention)9, 20, new double[1]));

    private static SpiralGeometry? Typed(double diameter, double width, LapConvention convention, double value)
    {
        try
        {
            Length length = Length.FromMillimeters(value);
            return new SpiralGeometry(Length.FromMillimeters(diameter), Length.FromMillimeters(width), convention switch
            {
                LapConvention.TrueLap => SpiralSetting.FromTrueLap(length),
                LapConvention.LapAlongPipe => SpiralSetting.FromLapAlongPipe(length),
                LapConvention.LapBetweenMarks => SpiralSetting.FromLapBetweenMarks(length),
                _ => SpiralSetting.FromAdvance(length),
            });
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
