using SacrificialTape.ServiceLife;

namespace SacrificialTape.Documents;

/// <summary>How a power law is read and written: by the name of one of the library's, or by an exponent of the user's own.</summary>
internal static class PowerLawLossForm
{
    private static readonly IReadOnlyList<(string Name, PowerLawLoss Law)> Known =
    [
        ("zinc, mean exponent", PowerLawLoss.ZincMean),
        ("zinc, upper exponent", PowerLawLoss.ZincUpper),
        ("steel, mean exponent", PowerLawLoss.SteelMean),
        ("steel, upper exponent", PowerLawLoss.SteelUpper),
        ("zinc in soil", PowerLawLoss.ZincInSoil),
        ("steel in soil", PowerLawLoss.SteelInSoil),
    ];

    internal static LossLawForm Form { get; } = LossLawForm.Of<PowerLawLoss>("power law", Read, Write);

    private static PowerLawLoss? Read(FormReader reader)
    {
        if (reader.Has("exponent"))
        {
            double exponent = reader.Number("exponent");
            return reader.Make(() => new PowerLawLoss(FormReader.At("exponent", () => TimeExponent.FromValue(exponent))));
        }

        string name = reader.Word("name", [.. Known.Select(static one => one.Name)]);
        return reader.Make(() => Known.First(one => one.Name == name).Law);
    }

    private static void Write(FormWriter writer, PowerLawLoss law)
    {
        if (Known.FirstOrDefault(one => one.Law.Equals(law)) is { Name: { } name })
        {
            writer.Text("name", name);
            return;
        }

        writer.Number("exponent", law.Exponent.Value);
    }
}
