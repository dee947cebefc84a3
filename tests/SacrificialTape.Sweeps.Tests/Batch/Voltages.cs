using SacrificialTape.Contact;
using SacrificialTape.Provenance;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Tests.Batch;

/// <summary>Voltages lost at windows by rows are those of the scalar form.</summary>
public sealed class Voltages
{
    [Fact]
    public void Rows_of_a_grid_agree_with_the_scalar_form()
    {
        double[] lost = new double[1];
        for (double foil = 20; foil < 300; foil *= 1.9)
        {
            for (double demand = 1e-5; demand < 1; demand *= 7)
            {
                for (double contact = 1; contact < 1e4; contact *= 3.7)
                {
                    foreach (double times in new[] { 1.0, 1.0000001, 3, 1000 })
                    {
                        double served = contact / 1e4 * times;
                        ContactVoltageRows.Lost(foil, 5.9e-8, demand, served, 12.5, contact, 3400, 100, lost);
                        double sheet = VoltageKernel.SheetOhm(5.9e-8, foil, default(NoSteps));
                        double expected = VoltageKernel.Budget(sheet, demand, served, 12.5, contact, 3400, 100, default(NoSteps)).TotalV;
                        Ulps.AtMost(4, expected, lost[0], $"foil {foil}, demand {demand}, contact {contact}, served {served}");
                    }
                }
            }
        }
    }

    [Theory]
    [InlineData(0, 5.9e-8, 0.01, 1, 10, 10, 1000, 100)]
    [InlineData(80, 0, 0.01, 1, 10, 10, 1000, 100)]
    [InlineData(80, 5.9e-8, -0.01, 1, 10, 10, 1000, 100)]
    [InlineData(80, 5.9e-8, 0.01, 0.0009, 10, 10, 1000, 100)]
    [InlineData(80, 5.9e-8, 0.01, 1, 0, 10, 1000, 100)]
    [InlineData(80, 5.9e-8, 0.01, 1, 10, 0, 1000, 100)]
    [InlineData(80, 5.9e-8, 0.01, 1, 10, 10, 0, 100)]
    [InlineData(80, 5.9e-8, 0.01, 1, 10, 10, 1000, double.NaN)]
    public void What_the_typed_form_refuses_is_not_a_number(
        double foil, double ohm, double demand, double served, double adhesive, double contact, double length, double width)
    {
        double[] lost = new double[1];
        ContactVoltageRows.Lost(foil, ohm, demand, served, adhesive, contact, length, width, lost);
        Assert.True(double.IsNaN(lost[0]));
    }

    // Each value in turn at the end of its range, and one bit beyond.
    [Theory]
    [InlineData(0, 10_000)]
    [InlineData(1, 1)]
    [InlineData(2, 0, true)]
    [InlineData(2, double.MaxValue)]
    [InlineData(3, 1e6)]
    [InlineData(4, double.MaxValue)]
    [InlineData(6, 1e9)]
    [InlineData(7, 10_000)]
    public void The_end_of_a_range_is_taken_and_what_lies_beyond_is_not(int which, double end, bool low = false)
    {
        double[] x = [80, 5.9e-8, 0.01, 1, 10, 10, 1000, 100];
        double[] lost = new double[1];
        x[which] = end;
        ContactVoltageRows.Lost(x[0], x[1], x[2], x[3], x[4], x[5], x[6], x[7], lost);
        Assert.False(double.IsNaN(lost[0]));
        x[which] = low ? Math.BitDecrement(end) : Math.BitIncrement(end);
        ContactVoltageRows.Lost(x[0], x[1], x[2], x[3], x[4], x[5], x[6], x[7], lost);
        Assert.True(double.IsNaN(lost[0]));
    }
}
