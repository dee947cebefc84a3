using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>
/// How an exposure is read and written: by the name the library has for it, as measured rates with a note, or as rates
/// with all that the library knows of them.
/// </summary>
internal static class ExposureForm
{
    private const string Measured = "measured";
    private const string Rates = "rates";

    private static readonly IReadOnlyList<string> Kinds = [.. NamedExposures.Kinds, Measured, Rates];

    internal static ZincExposure? Read(FormReader reader)
    {
        string kind = reader.Word("kind", Kinds);
        return kind switch
        {
            Measured => ReadMeasured(reader),
            Rates => ReadRates(reader),
            _ => ReadNamed(reader, kind),
        };
    }

    internal static void Write(FormWriter writer, ZincExposure exposure)
    {
        foreach ((string kind, string name, ZincExposure known) in NamedExposures.All)
        {
            if (known.Name == exposure.Name && known.Equals(exposure))
            {
                writer.Text("kind", kind);
                writer.Text("name", name);
                return;
            }
        }

        FirstYearRate rate = exposure.Rate;
        bool measured = rate.Equals(FirstYearRate.FromMeasurement(Metal.Zinc, rate.Range.Lowest, rate.Range.Highest, NoteOf(rate)));
        writer.Text("kind", measured ? Measured : Rates);
        writer.Number("lowest", rate.Range.Lowest.MicrometersPerYear, TradeUnit.MicrometerPerYear);
        writer.Number("highest", rate.Range.Highest.MicrometersPerYear, TradeUnit.MicrometerPerYear);
        if (measured)
        {
            writer.Text("note", rate.Basis.Note);
            return;
        }

        writer.Text("name", rate.Name);
        writer.Word("medium", rate.Medium, JobWords.Media);
        writer.Raw(json => BasisReader.Write(json, "basis", rate.Basis));
        WriteRest(writer, rate);
    }

    private static string NoteOf(FirstYearRate rate) => string.IsNullOrWhiteSpace(rate.Basis.Note) ? "-" : rate.Basis.Note;

    private static ZincExposure? ReadNamed(FormReader reader, string kind)
    {
        (string Kind, string Name, ZincExposure Exposure)[] known = [.. NamedExposures.All.Where(one => one.Kind == kind)];
        if (known.Length == 0)
        {
            return null; // an unknown kind, which is a fault already
        }

        string name = reader.Word("name", [.. known.Select(static one => one.Name)]);
        return reader.Make(() => known.First(one => one.Name == name).Exposure);
    }

    private static ZincExposure? ReadMeasured(FormReader reader)
    {
        double lowest = reader.Number("lowest", TradeUnit.MicrometerPerYear);
        double highest = reader.Number("highest", TradeUnit.MicrometerPerYear);
        string note = reader.Text("note");
        return reader.Make(() => ZincExposure.FromMeasurement(Rate("lowest", lowest), Rate("highest", highest), note));
    }

    private static ZincExposure? ReadRates(FormReader reader)
    {
        double lowest = reader.Number("lowest", TradeUnit.MicrometerPerYear);
        double highest = reader.Number("highest", TradeUnit.MicrometerPerYear);
        string name = reader.Text("name");
        ExposureMedium medium = reader.Word("medium", JobWords.Media);
        Basis? basis = reader.Members.Required("basis", "on what the rates rest") is { } member ? BasisReader.Read(member, reader.Context.Faults) : null;
        CorrosivityCategory? category = reader.Has("category") ? reader.Word("category", JobWords.Categories) : null;
        SoilModel? soil = reader.Has("soil") ? reader.Word("soil", JobWords.SoilModels) : null;
        double? density = reader.OptionalNumber("couponDensity", TradeUnit.KilogramPerCubicMeter);
        double? median = reader.OptionalNumber("median", TradeUnit.MicrometerPerYear);
        double? spread = reader.OptionalNumber("logSpread", TradeUnit.One);
        ValueList<RateConcern> concerns = reader.List("concerns", RateConcernForm.Read);
        return reader.Make(() => ZincExposure.From(FirstYearRate.Restored(
            name,
            medium,
            new RateRange(Rate("lowest", lowest), Rate("highest", highest)),
            basis!,
            (category, soil, LogNormal(median, spread), density),
            concerns)));
    }

    private static void WriteRest(FormWriter writer, FirstYearRate rate)
    {
        if (rate.Category is { } category)
        {
            writer.Word("category", category, JobWords.Categories);
        }

        if (rate.Soil is { } soil)
        {
            writer.Word("soil", soil, JobWords.SoilModels);
        }

        if (rate.CouponDensity is { } density)
        {
            writer.Number("couponDensity", density, TradeUnit.KilogramPerCubicMeter);
        }

        if (rate.LogNormal is { } spread)
        {
            writer.Number("median", spread.Median.MicrometersPerYear, TradeUnit.MicrometerPerYear);
            writer.Number("logSpread", spread.Spread.Value, TradeUnit.One);
        }

        writer.List("concerns", rate.Concerns, RateConcernForm.Write);
    }

    private static CorrosionRate Rate(string member, double um) => FormReader.At(member, () => CorrosionRate.FromMicrometersPerYear(um));

    private static LogNormalRate? LogNormal(double? median, double? spread) => (median, spread) switch
    {
        ({ } middle, { } width) => new LogNormalRate(Rate("median", middle), FormReader.At("logSpread", () => LogSpread.FromValue(width))),
        (null, null) => null,
        _ => throw new ArgumentException("'median' and 'logSpread' belong together: state both, or none."),
    };
}
