using System.Globalization;

namespace SacrificialTape.Tests.Quantities;

/// <summary>A measure written for a reader of another culture.</summary>
public sealed class MeasureInACulture
{
    [Theory]
    [InlineData("de-DE", "1,5 mm")]
    [InlineData("fr-FR", "1,5 mm")]
    [InlineData("en-US", "1.5 mm")]
    public void The_decimal_sign_is_the_readers_and_the_unit_stays(string name, string text)
    {
        CultureInfo culture = CultureInfo.GetCultureInfo(name);
        var measure = Measure.Parse("1.5 mm");
        Assert.Equal(text, measure.ToText(culture));
        Assert.Equal(measure, Measure.Parse(measure.ToText(culture), culture));
    }

    [Fact]
    public void Without_a_culture_it_is_the_invariant_text()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            var measure = new Measure(1234.5678, TradeUnit.One);
            Assert.Equal("1234.57", measure.ToText(null));
            Assert.Equal(measure.ToString(), measure.ToText(null));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Equal("unset", default(Measure).ToText(null));
    }
}
