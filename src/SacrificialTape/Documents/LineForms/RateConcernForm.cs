using SacrificialTape.Exposure;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>How what speaks against a rate is read and written: a rule, and what was measured.</summary>
internal static class RateConcernForm
{
    internal static RateConcern? Read(FormReader reader)
    {
        string rule = reader.Text("rule");
        Measure? measured = reader.Members.OptionalMeasure("measured");
        Measure? limit = reader.Members.OptionalMeasure("limit");
        return reader.Make(() => new RateConcern(rule, measured, limit));
    }

    internal static void Write(FormWriter writer, RateConcern concern)
    {
        writer.Text("rule", concern.Rule);
        writer.Raw(json =>
        {
            if (concern.Measured is { } measured)
            {
                json.Measure("measured", measured);
            }

            if (concern.Limit is { } limit)
            {
                json.Measure("limit", limit);
            }
        });
    }
}
