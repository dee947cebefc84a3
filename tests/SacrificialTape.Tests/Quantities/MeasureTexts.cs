using System.Globalization;
using FsCheck.Xunit;

namespace SacrificialTape.Tests.Quantities;

public sealed class MeasureTexts
{
    [Property(MaxTest = 500)]
    public void What_is_written_reads_back_as_the_same(int number, byte power, byte unit)
    {
        // Six digits are written: six digits come back.
        double value = double.Parse(string.Create(CultureInfo.InvariantCulture, $"{number % 1_000_000}E{(power % 18) - 9}"), CultureInfo.InvariantCulture);
        TradeUnit[] units = Enum.GetValues<TradeUnit>();
        var measure = new Measure(value, units[unit % units.Length]);
        Measure read = Measure.Parse(measure.ToString());
        Assert.Equal(measure.Unit, read.Unit);
        Assert.Equal(measure.Number, read.Number);
        Assert.Equal(measure, read);
        Assert.Equal(measure.GetHashCode(), read.GetHashCode());
        Assert.Equal(measure.ToString(), read.ToString());
    }

    [Theory]
    [InlineData("85 um", 85, TradeUnit.Micrometer)]
    [InlineData("85 \u00B5m", 85, TradeUnit.Micrometer)]
    [InlineData("85 \u03BCm", 85, TradeUnit.Micrometer)]
    [InlineData("85 micron", 85, TradeUnit.Micrometer)]
    [InlineData("85microns", 85, TradeUnit.Micrometer)]
    [InlineData("4.2 um/a", 4.2, TradeUnit.MicrometerPerYear)]
    [InlineData("4.2 \u00B5m/a", 4.2, TradeUnit.MicrometerPerYear)]
    [InlineData(" 0.1mm ", 0.1, TradeUnit.Millimeter)]
    [InlineData("-5 degC", -5, TradeUnit.DegreeCelsius)]
    [InlineData("1e-3 m", 0.001, TradeUnit.Meter)]
    [InlineData("2.5E+2mm", 250, TradeUnit.Millimeter)]
    [InlineData("20 %", 20, TradeUnit.Percent)]
    [InlineData("3", 3, TradeUnit.One)]
    [InlineData("12 m\u00B2", 12, TradeUnit.SquareMeter)]
    public void Is_read(string text, double number, TradeUnit unit)
    {
        Measure read = Measure.Parse(text);
        Assert.Equal(number, read.Number);
        Assert.Equal(unit, read.Unit);
        Assert.True(Measure.TryParse(text, null, out Measure tried));
        Assert.Equal(read, tried);
    }

    [Theory]
    [InlineData("1,5 mm", "decimal point")]
    [InlineData("1,500 mm", "decimal point")]
    [InlineData("mm", "does not start with a number")]
    [InlineData("", "does not start with a number")]
    [InlineData("NaN mm", "does not start with a number")]
    [InlineData("1e999 mm", "finite number")]
    [InlineData("20 MM", "Case counts")]
    [InlineData("20 furlongs", "'furlongs'")]
    [InlineData("1.2.3 mm", "finite number")]
    [InlineData("5 mm 3", "'mm 3'")]
    [InlineData("5 - 6 mm", "'- 6 mm'")]
    public void Is_refused_with_a_reason(string text, string reason)
    {
        Assert.Contains(reason, Assert.Throws<FormatException>(() => Measure.Parse(text)).Message, StringComparison.Ordinal);
        Assert.False(Measure.TryParse(text, null, out _));
    }

    [Fact]
    public void A_missing_text_is_not_a_measure()
    {
        Assert.Throws<ArgumentNullException>(static () => Measure.Parse(null!));
        Assert.False(Measure.TryParse(null, null, out _));
    }

    [Fact]
    public void A_culture_handed_in_reads_its_own_comma() => Assert.Equal(
        1.5, Measure.Parse("1,5 mm", CultureInfo.GetCultureInfo("de-DE")).Number);

    [Fact]
    public void Another_kind_of_quantity_is_not_converted()
    {
        InvalidOperationException thrown = Assert.Throws<InvalidOperationException>(static () => new Measure(5, TradeUnit.Year).ToLength());
        Assert.Contains("'5 a' is not a measure in mm", thrown.Message, StringComparison.Ordinal);
    }
}
