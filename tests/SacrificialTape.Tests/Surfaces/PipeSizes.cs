using System.Globalization;

namespace SacrificialTape.Tests.Surfaces;

public sealed class PipeSizes
{
    private static readonly int[] Ambiguous = [20, 25, 32, 65, 125, 300];

    public static TheoryData<int> All => [.. PipeSizeTable.Rows.ToArray().Select(static row => row.Dn)];

    [Theory]
    [MemberData(nameof(All))]
    public void Name_and_number_lead_to_the_same_size(int dn)
    {
        var asme = PipeSize.FromDn(dn, PipeStandard.AsmeB3610M);
        Assert.Equal(asme, PipeSize.FromNps(asme.Nps));
        Assert.Equal(asme, PipeSize.Parse("NPS " + asme.Nps));
        Assert.Equal(asme, PipeSize.Parse("nps" + asme.Nps.Replace(' ', '-')));
        Assert.Equal(asme, PipeSize.Parse(string.Create(CultureInfo.InvariantCulture, $"DN {dn} ASME")));
        Assert.Equal(asme, PipeSize.Parse(string.Create(CultureInfo.InvariantCulture, $" dn{dn}asme ")));
        if (Ambiguous.Contains(dn))
        {
            var iso = PipeSize.FromDn(dn, PipeStandard.Iso4200Series1);
            ArgumentException thrown = Assert.Throws<ArgumentException>(() => PipeSize.FromDn(dn));
            Assert.Contains(asme.OutsideDiameter.Millimeters.ToString(CultureInfo.InvariantCulture) + " mm under ASME", thrown.Message, StringComparison.Ordinal);
            Assert.Contains(iso.OutsideDiameter.Millimeters.ToString(CultureInfo.InvariantCulture) + " mm under ISO", thrown.Message, StringComparison.Ordinal);
            Assert.Equal(iso, PipeSize.Parse(string.Create(CultureInfo.InvariantCulture, $"DN {dn} ISO")));
        }
        else
        {
            Assert.Equal(asme, PipeSize.FromDn(dn));
            Assert.Equal(asme, PipeSize.Parse(string.Create(CultureInfo.InvariantCulture, $"DN {dn}")));
        }
    }

    [Fact]
    public void Diameters_grow_with_the_size_under_each_standard()
    {
        PipeSizeTable.Row[] rows = PipeSizeTable.Rows.ToArray();
        Assert.Equal(rows.OrderBy(static row => row.AsmeMm), rows);
        Assert.Equal(rows.OrderBy(static row => row.Dn), rows);
        Assert.Equal(rows.Select(static row => row.IsoMm).OfType<double>().Order(), rows.Select(static row => row.IsoMm).OfType<double>());
    }

    [Theory]
    [InlineData("DN 60", "DN 60 is not one of 15, 20")]
    [InlineData("NPS 13", "NPS ' 13' is not one of 1/2")]
    [InlineData("DN 90 ISO", "ISO 4200 series 1 does not list NPS 3 1/2 (DN 90)")]
    [InlineData("60.3", "Expected for instance 'NPS 2 1/2'")]
    [InlineData("DN -15", "Expected for instance")]
    [InlineData("DN 1,000", "Expected for instance")]
    [InlineData("DN", "Expected for instance")]
    public void An_unknown_size_is_refused_with_what_is_known(string text, string said) =>
        Assert.Contains(said, Assert.Throws<ArgumentException>(() => PipeSize.Parse(text)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("NPS")]
    public void An_empty_text_is_no_size(string text) => Assert.ThrowsAny<ArgumentException>(() => PipeSize.Parse(text));
}
