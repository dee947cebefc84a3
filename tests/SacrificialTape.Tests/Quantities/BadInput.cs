using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Quantities;

public sealed class BadInput
{
    [Fact]
    public void Percent_where_a_fraction_is_wanted()
    {
        Errors.Refused(static () => Utilisation.FromFraction(80), "value", "80", "more than 0 and at most 1 (a fraction of 1; write 0.8 for 80 %)");
        Errors.Refused(static () => Contingency.FromFraction(5), "value", "5", "at least 0 and less than 1 (a fraction of 1; write 0.05 for 5 %)");
        Errors.Refused(static () => Utilisation.FromFraction(0), "value", "more than 0");
    }

    [Theory]
    [InlineData(-0.5)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Negative_or_no_number_at_all(double value)
    {
        string said = double.IsFinite(value) ? "-0.5" : "not a finite number";
        Errors.Refused(() => CorrosionRate.FromMicrometersPerYear(value), "rate", said, "at least 0 um/a");
        Errors.Refused(() => CorrosionRate.FromMilsPerYear(value), "rate", said, "at least 0 mil/a");
        Errors.Refused(() => MassLossRate.FromGramsPerSquareMeterYear(value), "rate", said, "at least 0 g/(m2.a)");
        Errors.Refused(() => DepositionRate.FromMilligramsPerSquareMeterDay(value), "value", said, "at least 0 mg/(m2.d)");
        Errors.Refused(() => ContactResistivity.FromOhmSquareCentimeters(value), "value", said, "at least 0 ohm.cm2");
        Errors.Refused(() => ElectrochemicalCapacity.FromAmpereHoursPerKilogram(value), "value", said, "more than 0 A.h/kg");
        Errors.Refused(() => BareRatio.FromSquareCentimetersPerSquareMeter(value), "value", said, "at least 0 and at most 10000 cm2/m2");
        Errors.Refused(() => AreaRatio.FromRatio(value), "value", said, "at least 0");
        Errors.Refused(() => Contingency.FromFraction(value), "value", said);
        Errors.Refused(() => Utilisation.FromFraction(value), "value", said);
        Errors.Refused(() => TimeExponent.FromValue(value), "value", said, "more than 0 and at most 1");
    }

    [Fact]
    public void A_number_that_is_none() =>
        Errors.Refused(static () => new Measure(double.NaN, TradeUnit.Millimeter), "number", "not a finite number", "any finite number mm");

    [Fact]
    public void A_length_that_is_no_number_is_refused_by_the_quantity_itself() =>
        Assert.ThrowsAny<ArgumentException>(static () => Pipe(double.NaN));

    [Fact]
    public void A_loss_in_no_time()
    {
        Errors.Refused(static () => CorrosionRate.FromLoss(Mm(0.01), Duration.Zero), "time", "0 a", "more than 0 a");
        Errors.Refused(static () => CorrosionRate.FromLoss(Mm(-0.01), Duration.FromYears365(1)), "loss", "-10 um", "at least 0 um");
        Errors.Refused(static () => CorrosionRate.FromMicrometersPerYear(1).ToMassLoss(Density.Zero), "density", "0 kg/m3", "more than 0 kg/m3");
    }

    [Fact]
    public void A_list_with_a_gap()
    {
        ArgumentException thrown = Assert.Throws<ArgumentException>(static () => new ValueList<string>(["a", null!, "b"]));
        Assert.Contains("Item 1 is null", thrown.Message, StringComparison.Ordinal);
        Assert.Equal("items", thrown.ParamName);
    }

    [Fact]
    public void A_unit_that_is_none() => Errors.Refused(static () => new Measure(1, (TradeUnit)999), "unit", "Not one of the trade's units");
}
