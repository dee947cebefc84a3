using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Json.Schema;
using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>The published schema and the reader agree: held by an independent JSON Schema library.</summary>
public sealed class RuleSetSchema
{
    private static readonly JsonSchema Published =
        JsonSchema.FromFile(Path.Combine(AppContext.BaseDirectory, "schemas", "rule-set-1.json"));

    [Property(MaxTest = 30)]
    public Property Whatever_is_written_fits_the_schema() => Prop.ForAll(TeamSet.AnyFile, static document => Fits(document.Write()));

    [Theory]
    [MemberData(nameof(FaultyRuleSets.Structural), MemberType = typeof(FaultyRuleSets))]
    public void A_slip_of_structure_fits_neither(string text)
    {
        Assert.Throws<DocumentException>(() => RuleSetDocument.Read(text));
        Assert.False(Fits(text));
    }

    private static bool Fits(string text) => Published.Evaluate(JsonDocument.Parse(text).RootElement).IsValid;
}
