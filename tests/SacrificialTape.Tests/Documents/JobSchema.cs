using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Json.Schema;
using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>The published schema of jobs and the reader agree: held by an independent JSON Schema library.</summary>
public sealed class JobSchema
{
    // Registered by its address once for the whole process.
    internal static readonly JsonSchema Published = JsonSchema.FromFile(Path.Combine(AppContext.BaseDirectory, "schemas", "job-1.json"));

    [Property(MaxTest = 6)]
    public Property Whatever_is_written_fits_the_schema() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        // Kinds of a host are not in the library's schema.
        JobDocument document = AnyJob.Make(seed);
        var known = new Job(document.Job.Name, document.Job.Lines.Select(Known), document.Job.TakeOff, document.Job.Rules);
        CostPrices? prices = document.Prices is { } all
            ? new CostPrices(all.Rolls, all.Labour, all.Norms, all.Access, all.Consumables, all.Waste, [.. all.Own.OfType<CostItem>()])
            : null;
        string text = new JobDocument(known, prices, document.Notes, document.Stocks, rulesDocument: document.RulesDocument).Write();
        using var json = JsonDocument.Parse(text);
        EvaluationResults results = Published.Evaluate(json.RootElement);
        Assert.True(results.IsValid, text);
    });

    [Fact]
    public void Every_surface_fits_the_schema()
    {
        JsonSchema surface = JsonSchema.FromText($$"""{ "$ref": "{{Published.BaseUri}}#/$defs/surface" }""");
        SchemaRegistry.Global.Register(Published);
        var random = new Random(3);
        StripStock stock = Make.Stock();
        foreach (Func<Random, Surface> make in SurfaceKinds.All)
        {
            var lay = new OwnLay(make(random), stock, "any");
            var line = new SurveyLine("L", lay, ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Unlimited);
            using var json = JsonDocument.Parse(new JobDocument(new Job("j", [line], Make.TakeOff())).Write(AnyJob.Forms));
            JsonElement written = json.RootElement.GetProperty("lines")[0].GetProperty("lay").GetProperty("surface");
            Assert.True(surface.Evaluate(written).IsValid, written.ToString());
        }
    }

    [Theory]
    [MemberData(nameof(FaultyJobs.Structural), MemberType = typeof(FaultyJobs))]
    public void A_slip_of_structure_fits_neither(string text)
    {
        Assert.Throws<DocumentException>(() => JobDocument.Read(text));
        try
        {
            using var json = JsonDocument.Parse(text);
            Assert.False(Published.Evaluate(json.RootElement).IsValid);
        }
        catch (JsonException)
        {
            // No JSON at all.
        }
    }

    [Fact]
    public void Most_slips_can_be_seen_by_a_schema() => Assert.InRange(FaultyJobs.Structural.Count, 20, FaultyJobs.Slips.Count - 1);

    private static SurveyLine Known(SurveyLine line)
    {
        if (line.Lay is OwnLay)
        {
            return new SurveyLine(line.Tag, LayKinds.All[5](new Random(1), line.Lay.Stock), line.Exposure, line.RequiredLife);
        }

        LineNeeds needs = line.Needs;
        ValueList<ILossLaw>? laws = needs.Laws is { } all ? [.. all.Where(static law => law is not OwnLaw)] : null;
        return new SurveyLine(
            new LineNeeds(
                needs.Tag, needs.Exposure, needs.RequiredLife, needs.Steel, needs.Welds, needs.LayersWanted, needs.Spots, needs.Ends, needs.PaintOver, needs.Windows, needs.Under, laws),
            line.Lay);
    }
}
