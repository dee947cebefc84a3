using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Documents;

/// <summary>How constant rates one after the other are read and written.</summary>
internal static class PiecewiseLossForm
{
    internal static LossLawForm Form { get; } = LossLawForm.Of<PiecewiseLoss>("constant rates", Read, Write);

    private static PiecewiseLoss? Read(FormReader reader)
    {
        string name = reader.Text("name");
        ValueList<RatePeriod> periods = reader.List("periods", ReadPeriod);
        double afterwards = reader.Number("afterwards", TradeUnit.MicrometerPerYear);
        Basis? basis = reader.Members.Required("basis", "on what the rates rest") is { } member ? BasisReader.Read(member, reader.Context.Faults) : null;
        return reader.Make(() => new PiecewiseLoss(name, periods, FormReader.At("afterwards", () => CorrosionRate.FromMicrometersPerYear(afterwards)), basis!));
    }

    private static void Write(FormWriter writer, PiecewiseLoss law)
    {
        writer.Text("name", law.Name);
        writer.List("periods", law.Periods, WritePeriod);
        writer.Number("afterwards", law.Afterwards.MicrometersPerYear, TradeUnit.MicrometerPerYear);
        writer.Raw(json => BasisReader.Write(json, "basis", law.Basis));
    }

    private static RatePeriod? ReadPeriod(FormReader reader)
    {
        double rate = reader.Number("rate", TradeUnit.MicrometerPerYear);
        double years = reader.Number("length", TradeUnit.Year);
        return reader.Make(() => new RatePeriod(FormReader.At("rate", () => CorrosionRate.FromMicrometersPerYear(rate)), UnitConversions.FromYears(years)));
    }

    private static void WritePeriod(FormWriter writer, RatePeriod period)
    {
        writer.Number("rate", period.Rate.MicrometersPerYear, TradeUnit.MicrometerPerYear);
        writer.Number("length", period.Years, TradeUnit.Year);
    }
}
