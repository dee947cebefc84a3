using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Json.Schema;
using SacrificialTape.Documents;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Documents;

/// <summary>Readings of an inspection come back from their file as they went in.</summary>
public sealed class InspectionFiles
{
    private static readonly JsonSchema Published = JsonSchema.FromFile(Path.Combine(AppContext.BaseDirectory, "schemas", "inspection-1.json"));

    public static TheoryData<string, string, string, string> Slips => new()
    {
        { "\"together\": \"85 um\"", "\"together\": \"0 um\"", "$.sets[0].readings[0].together", "a hole is no reading" },
        { "\"together\": \"85 um\"", "\"together\": \"85 g\"", "$.sets[0].readings[0].together", "does not measure what 'together' is" },
        { "\"together\": \"85 um\",", string.Empty, "$.sets[0].readings[0]", "'together' is missing" },
        { "\"on\": \"2031-05-04\"", "\"on\": \"4.5.2031\"", "$.sets[0].on", "Expected year-month-day" },
        { "\"by\": \"A. Person\",", string.Empty, "$.sets[0]", "'by' is missing" },
        { "\"significance\": \"0.05\"", "\"significance\": \"0.5\"", "$.sets[0].significance", "0.5 is outside the accepted range" },
        { "\"place\": \"H2-017 top\"", "\"place\": \"H2-018\"", "$.sets[1].place", "The place 'H2-018' stands twice" },
        { "\"schema\": 1", "\"schema\": 3", "$.schema", "Use a newer library" },
        { "\"document\": \"inspection\"", "\"document\": \"job\"", "$.document", "Expected 'inspection'" },
        { "\"sets\": [", "\"sets\": [], \"more\": [", "$.sets", "at least one set" },
    };

    private static string Whole { get; } = new InspectionDocument(
        "Spring round",
        [
            new ReadingSet("H2-017 top", new DateOnly(2031, 5, 4), "A. Person", "micrometer, checked 2031-05-01", Some(new Random(1), 85)),
            new ReadingSet("H2-018", new DateOnly(2031, 5, 4), "A. Person", "micrometer, checked 2031-05-01", Some(new Random(2), 85)),
        ]).Write();

    [Property(MaxTest = 50)]
    public Property Reading_what_was_written_gives_the_same_document() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        var random = new Random(seed);
        var document = new InspectionDocument("round", [new ReadingSet("a", new DateOnly(2031, 5, 4), "A", "gauge", Some(random)), new ReadingSet("it's", new DateOnly(2032, 5, 4), "A", "gauge", Some(random))]);
        string text = document.Write();
        InspectionDocument read = InspectionDocument.Read(text);
        Assert.Equal(document, read);
        Assert.Equal(text, read.Write());
        Assert.Equal(document.Sets[0].Readings.All.Mean.Micrometers, read.Sets[0].Readings.All.Mean.Micrometers);
        using var json = JsonDocument.Parse(text);
        Assert.True(Published.Evaluate(json.RootElement).IsValid, text);
    });

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_told_at_its_place(string right, string wrong, string path, string said) =>
        Slip.IsTold(() => InspectionDocument.Read(Slip.In(Whole, right, wrong)), path, said);

    [Fact]
    public void Units_stay_as_they_were_read_off()
    {
        string text = Whole.Replace("\"85 um\"", "\"0.085 mm\"", StringComparison.Ordinal);
        Assert.Equal(text, InspectionDocument.Read(text).Write());
    }

    private static FoilReadings Some(Random random, double? first = null) => new(
        new Foil(Mm(0.1 + (0.001 * random.NextDouble()))),
        [
            FoilReading.Measured(Length.FromMicrometers(first ?? 80 + random.NextDouble()), new ReadingPreparation(true, Length.FromMicrometers(5), "n")),
            FoilReading.Measured(Length.FromMicrometers(190 + random.NextDouble()), new ReadingPreparation(false, Length.FromMicrometers(9 * random.NextDouble()), "n"), 2),
            FoilReading.Weighed(Area.FromSquareCentimeters(10 + random.NextDouble()), Mass.FromGrams(0.6 + (0.1 * random.NextDouble())), Mass.FromGrams(2), "w", Density.FromKilogramsPerCubicMeter(7000 + random.NextDouble())),
        ],
        Probability.FromFraction(0.05));
}
