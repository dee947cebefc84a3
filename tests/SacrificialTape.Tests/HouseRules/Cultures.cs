using System.Collections;
using System.Globalization;
using System.Reflection;
using SacrificialTape.Tests.Costing;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>A whole estimate gives the same numbers and the same text whatever the culture of the machine.</summary>
public sealed class Cultures
{
    // Decimal commas, thin spaces, the dotless i, Arabic digits and signs.
    [Theory]
    [InlineData("de-DE")]
    [InlineData("fr-FR")]
    [InlineData("tr-TR")]
    [InlineData("en-US")]
    [InlineData("ar-SA")]
    [InlineData("sv-SE")]
    public void Everything_a_job_says_is_the_same_under(string culture)
    {
        IReadOnlyList<string> invariant = Under(CultureInfo.InvariantCulture, Said);
        IReadOnlyList<string> here = Under(CultureInfo.GetCultureInfo(culture), Said);
        Assert.True(invariant.Count > 500, $"Only {invariant.Count} texts were found.");
        Assert.Equal(invariant, here);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("fr-FR")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("sv-SE")]
    public void Measures_and_sizes_are_read_the_same_under(string culture) => Under(CultureInfo.GetCultureInfo(culture), static () =>
    {
        Assert.Equal(new Measure(1.5, TradeUnit.Millimeter), Measure.Parse("1.5 mm"));
        Assert.Equal(new Measure(-12.25, TradeUnit.DegreeCelsius), Measure.Parse("-12.25 degC"));
        Assert.False(Measure.TryParse("1,5 mm", null, out _));
        Assert.Equal("0.1683 in", Measure.Parse("0.1683in").ToString());
        Assert.Equal(PipeSize.FromDn(65, PipeStandard.Iso4200Series1), PipeSize.Parse("dn 65 iso"));
        Assert.Equal("DN 65 alone is ambiguous: 73 mm under ASME B36.10M, 76.1 mm under ISO 4200 series 1. State the standard. (Parameter 'dn')",
            Assert.Throws<ArgumentException>(static () => PipeSize.Parse("DN 65")).Message);
        Assert.Contains("0.1683 mm is outside the accepted range: at least 1 and at most 100000 mm", Assert.Throws<ArgumentOutOfRangeException>(
            static () => Pipe(0.1683)).Message, StringComparison.Ordinal);
        return 0;
    });

    [Fact]
    public void The_check_sees_a_text_that_follows_the_machine() =>
        Assert.NotEqual(Under(CultureInfo.GetCultureInfo("en-US"), static () => 1.5.ToString("N1", CultureInfo.CurrentCulture)),
            Under(CultureInfo.GetCultureInfo("de-DE"), static () => 1.5.ToString("N1", CultureInfo.CurrentCulture)));

    private static T Under<T>(CultureInfo culture, Func<T> run)
    {
        (CultureInfo, CultureInfo) before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            CultureInfo.CurrentCulture = culture;
            CultureInfo.CurrentUICulture = culture;
            return run();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = before;
        }
    }

    // Walks everything public that can be reached from an estimate, and notes each text and number with its place.
    private static List<string> Said()
    {
        var said = new List<string>();
        JobEstimate estimate = SampleJob.Make().Estimate();
        Walk(estimate, "estimate", said, [], 0);
        foreach (LineEstimate line in estimate.Lines)
        {
            said.Add(line.Line.Lay.ShowWorkings().ToString());
            said.Add(line.Line.Lay.ShowWorkings().ToMarkdown());
            said.Add(line.Line.Lay.Surface.ShowWorkings().ToMarkdown());
            said.Add(line.Life.ShowWorkings().ToMarkdown());
            said.Add(line.Contact?.ShowWorkings().ToMarkdown() ?? string.Empty);
        }

        said.AddRange(estimate.TakeOff.Stocks.Select(static stock => stock.ShowWorkings().ToMarkdown()));
        said.AddRange(RuleSet.Default.Rules.Select(static rule => rule.State("here").ToString()));
        CostEstimate cost = PricedJob.Full();
        Walk(cost, "cost", said, [], 0);
        Walk(cost.ToLedger(), "ledger", said, [], 0);
        said.Add(cost.ShowWorkings().ToMarkdown());
        var given = new OptionCase(0.045, 30, 8.5, 20, 1000.25m, 10.5, 50.75m, 5);
        Walk(new CostComparison([given.Make(later: given.Upkeep())], given.Study, given.Discount), "comparison", said, [], 0);
        said.Add(given.Priced(given.Make(later: given.Upkeep())).AtEarliestLife.ShowWorkings().ToMarkdown());
        Walk(new WoundRoll(Mm(151.5), Mm(76.2), Mm(0.175)), "roll", said, [], 0);
        Walk(PipeSize.FromDn(32, PipeStandard.Iso4200Series1), "size", said, [], 0);
        return said;
    }

    private static void Walk(object? value, string place, List<string> said, HashSet<object> seen, int depth)
    {
        if (value is null || depth > 12)
        {
            return;
        }

        if (value is string or Enum or bool)
        {
            said.Add($"{place}: {value}");
            return;
        }

        if (value is IConvertible number)
        {
            said.Add(string.Create(CultureInfo.InvariantCulture, $"{place}: {number:R}"));
            return;
        }

        if (value is IQuantity quantity)
        {
            said.Add(string.Create(CultureInfo.InvariantCulture, $"{place}: {quantity.Value:R}"));
            return;
        }

        if (value is IEnumerable items and not string)
        {
            int at = 0;
            foreach (object item in items)
            {
                Walk(item, $"{place}[{at++}]", said, seen, depth + 1);
            }

            return;
        }

        if (value.GetType().Assembly != Library.Assembly || (!value.GetType().IsValueType && !seen.Add(value)))
        {
            return;
        }

        said.Add($"{place} as text: {value}");
        foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetIndexParameters().Length == 0 && !(value is Lifetime { IsUnlimited: true } && property.Name == "Duration"))
            {
                Walk(property.GetValue(value), place + "." + property.Name, said, seen, depth + 1);
            }
        }
    }
}
