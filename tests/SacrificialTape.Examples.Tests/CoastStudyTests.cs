using System.Buffers.Binary;
using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using CoastStudy;
using SacrificialTape.Sweeps.Answers;
using Xunit;

namespace SacrificialTape.Examples.Tests;

/// <summary>The study of an invented coast with few rows: its figures against plain counting, its pictures, and that it goes on.</summary>
public sealed class CoastStudyTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("sacrificialtape-").FullName;

    public void Dispose() => Directory.Delete(this.folder, recursive: true);

    [Fact]
    public void Its_chance_is_the_share_of_rows_that_last()
    {
        (int code, string output, _) = this.Run("--rows", "20000", "--years", "40");
        Assert.Equal(0, code);
        Assert.Contains("Invented", output, StringComparison.Ordinal);
        using JsonDocument summary = this.Summary();
        double[] lives = CoastSite.Spread(20_000, seed: 1).Study.Work(0, 20_000).Answers["life"].ToArray();
        Assert.Equal(lives.Count(static life => life >= 40) / 20_000.0, summary.RootElement.GetProperty("chanceOfAtLeastRequired").GetDouble(), 1e-12);
        Assert.Equal(lives.Average(), summary.RootElement.GetProperty("meanLifeYears").GetDouble(), 1e-9 * lives.Average());
        Assert.All(summary.RootElement.GetProperty("chanceOfAtLeast").EnumerateArray(), one => Assert.Equal(
            lives.Count(life => life >= one.GetProperty("years").GetDouble()) / 20_000.0, one.GetProperty("chance").GetDouble(), 1e-12));
        Assert.Equal("error of the rate", summary.RootElement.GetProperty("sensitivity")[0].GetProperty("input").GetString());
    }

    // Of independent inputs the shares alone add up to at most the whole, those in all to at least the whole.
    [Fact]
    public void Its_shares_add_up_as_shares_of_a_variance_do()
    {
        var kept = CoastSite.SensitivityKept(1_000_000, seed: 1);
        CoastSite.Sensitivity(1_000_000, seed: 1).Study.Run(kept, threads: 2, cancellation: TestContext.Current.CancellationToken);
        var shares = (SobolIndices)kept[0].Summary;
        Assert.Equal(8192, shares.Points);
        Assert.InRange(shares.FirstOrder.Sum(), 0.85, 1.02);
        Assert.InRange(shares.Total.Sum(), 0.98, 1.15);
        Assert.All(shares.FirstOrder.Zip(shares.Total), static one => Assert.InRange(one.First, -0.03, one.Second + 0.03));
    }

    [Fact]
    public void Its_air_is_of_category_C4_in_the_middle()
    {
        double[] rates = CoastSite.Spread(4096, seed: 1).Study.Work(0, 4096).Answers["rate"].ToArray();
        Array.Sort(rates);

        // ISO 9223: zinc loses 2.1 to 4.2 um in the first year of C4.
        Assert.InRange(rates[2048], 2.1, 4.2);
    }

    [Fact]
    public void It_draws_three_pictures_twice()
    {
        Assert.Equal(0, this.Run("--rows", "4096").Code);
        foreach (string name in new[] { "life-distribution", "life-exceedance", "life-sensitivity" })
        {
            byte[] png = File.ReadAllBytes(Path.Combine(this.folder, name + ".png"));
            Assert.Equal([0x89, .. "PNG"u8], png[..4]);
            Assert.Equal((900, 540), (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20))));
            XDocument svg = XDocument.Load(Path.Combine(this.folder, name + ".svg"));
            string words = string.Concat(svg.Descendants().Where(static one => one.Name.LocalName == "text").Select(static one => one.Value));
            Assert.Contains("Invented", words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Threads_and_a_second_run_change_nothing_and_another_study_is_refused()
    {
        (_, string first, _) = this.Run("--rows", "300000", "--threads", "2");
        (_, string second, _) = this.Run("--rows", "300000", "--threads", "1");
        Assert.Equal(first, second);
        (int code, string output, string errors) = this.Run("--rows", "300000", "--seed", "2");
        Assert.Equal((1, string.Empty), (code, output));
        Assert.Contains("is of another study", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--rows", "10")]
    [InlineData("--years", "-1")]
    [InlineData("--nonsense", "1")]
    [InlineData("--rows")]
    public void Wrong_arguments_show_how_it_is_used(params string[] arguments)
    {
        (int code, _, string errors) = this.Run(arguments);
        Assert.Equal(2, code);
        Assert.Contains("CoastStudy [--rows", errors, StringComparison.Ordinal);
    }

    private (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var errors = new StringWriter(CultureInfo.InvariantCulture);
        int code = CoastProgram.Run(["--out", this.folder, .. arguments], output, errors);
        return (code, output.ToString(), errors.ToString());
    }

    private JsonDocument Summary() => JsonDocument.Parse(File.ReadAllBytes(Path.Combine(this.folder, "summary.json")));
}
