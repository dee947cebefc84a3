using SacrificialTape.Contact;
using SacrificialTape.Costing;
using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace PlantSurvey;

/// <summary>The cells that every sheet of the survey has: where a line stands, how long it must last, what it is covered with.</summary>
internal sealed class LineReader(
    SurveyChoices choices, IReadOnlyDictionary<string, StripStock> stock, IReadOnlyDictionary<string, SurveyExposure> named, WindowSheet places)
{
    internal static readonly string[] Columns = ["line", "exposure", "life_a", "stock", "lay", "lap_mm"];

    internal static readonly string[] Optional =
        ["run", "metal", "windows", "window_cm2", "service_degC", "wet", "rate_um_a", "passes", "layers", "method", "clear", .. HazardList.Columns, "steel_mm"];

    private const string Measured = "measured";

    // In the cell of windows: have the library lay them out, or take their places from windows.csv.
    private const string Planned = "plan";
    private const string Placed = "places";

    private static readonly Dictionary<string, LineOrientation> Runs = new()
    {
        ["level"] = LineOrientation.Horizontal,
        ["upright"] = LineOrientation.Vertical,
    };

    private static readonly Dictionary<string, SubstrateMetal> Metals = new()
    {
        ["steel"] = SubstrateMetal.CarbonSteel,
        ["high-strength"] = SubstrateMetal.HighStrengthSteel,
        ["stainless"] = SubstrateMetal.StainlessSteel,
        ["aluminium"] = SubstrateMetal.Aluminium,
        ["magnesium"] = SubstrateMetal.Magnesium,
    };

    internal static readonly Dictionary<string, CorrosivityCategory?> Exposures = Enum.GetValues<CorrosivityCategory>()
        .ToDictionary(static category => category.ToString(), static category => (CorrosivityCategory?)category);

    private static readonly Dictionary<string, bool> YesOrNo = new() { ["yes"] = true, ["no"] = false };

    internal static readonly Dictionary<string, ApplicationMethod> Methods = new()
    {
        ["hand"] = ApplicationMethod.ByHand,
        ["head"] = ApplicationMethod.WrappingHead,
    };

    static LineReader() => Exposures[Measured] = null;

    // The words that every survey has, then the names of its own.
    private readonly Dictionary<string, string> exposures = Exposures.Keys.Concat(named.Keys).Distinct().ToDictionary(static name => name);

    /// <summary>Reads a line whose shape and lay are those of a sheet.</summary>
    /// <returns>The line, the work that it makes and what else is said of it; null where the row has faults.</returns>
    internal (SurveyLine Line, IReadOnlyList<LabourWork> Work, LineNotes Notes)? Read(CsvRow row, ShapeSheet sheet)
    {
        string tag = row.Text("line");
        SteelCondition? steel = Steel(row);
        (ZincExposure Zinc, SurveyExposure? Named)? exposure = this.Exposure(row);
        Length? thickness = Thickness(row);
        double years = row.Number("life_a");
        int layers = row.WholeOr("layers", 1);
        StripStock? strip = row.Choice("stock", stock);
        int passes = row.WholeOr("passes", 1);
        ApplicationMethod method = row.Choice("method", Methods, "hand");
        LayChoices? options = row.Try("passes", () => new LayChoices(choices.EndLap, choices.HandWander, passes, method));
        ValueList<StayClear> clear = ClearList.Read(row);
        ILay? lay = sheet.Lay(row, strip, options, new ValueList<StayClear>(clear.Where(static one => one.IsBand)));
        WeldWork? welds = sheet.Welds(row, lay, stock, choices.EndLap);
        if (row.Faulty || lay is null || steel is null || exposure is null)
        {
            return null;
        }

        if (steel.WindowsInPaint is { } windows)
        {
            _ = row.Try("windows", () => new BareContact(lay.Surface.Area, windows));
        }

        WindowLayout? layout = this.Windows(row, tag, lay);
        if (row.Faulty)
        {
            return null;
        }

        Duration life = Duration.FromYears365(years);
        SurveyLine? line = row.Try("life_a", () => new SurveyLine(
            tag, lay, exposure.Value.Zinc, Lifetime.Of(life), steel, welds, layers, new ValueList<StayClear>(clear.Where(static one => !one.IsBand)), windows: layout), ("spots", "clear"));
        return line is null ? null : (line, Work(lay, welds, method, sheet), new LineNotes(exposure.Value.Named, thickness));
    }

    private static IReadOnlyList<LabourWork> Work(ILay lay, WeldWork? welds, ApplicationMethod method, ShapeSheet sheet)
    {
        string surface = sheet.WorkOn(lay.Surface);
        var main = LabourWork.Of(lay, new LabourKind(lay.Strips[0].Purpose, method, surface));
        if (welds is null)
        {
            return [main];
        }

        var strip = Length.FromMillimeters(welds.Strips.Sum(static one => one.TotalLength.Millimeters));
        var covered = Area.FromSquareMeters(strip.Meters * welds.Stock.Width.Meters);
        return [main, new LabourWork(new LabourKind(StripPurpose.Weld, ApplicationMethod.ByHand, surface), covered, strip, welds.Strips.Sum(static one => (long)one.Count))];
    }

    private static SteelCondition? Steel(CsvRow row)
    {
        SubstrateMetal metal = row.Choice("metal", Metals, "steel");
        LineOrientation run = row.Choice("run", Runs, "level");
        bool wet = row.Choice("wet", YesOrNo, "no");
        double? degrees = row.OptionalNumber("service_degC");
        ContactWindows? windows = null;
        string stated = row.TextOr("windows", string.Empty);
        if (stated is Planned or Placed)
        {
            row.MustBeEmpty("window_cm2", $"Windows of '{stated}' have their own sizes; leave the cell empty.");
        }
        else if (stated.Length > 0)
        {
            int count = row.WholeOr("windows", 0);
            double each = row.Number("window_cm2");
            windows = row.Faulty ? null : row.Try("window_cm2", () => new ContactWindows(count, Area.FromSquareCentimeters(each)));
        }
        else
        {
            row.MustBeEmpty("window_cm2", "There are no windows; state their number, 0 for paint without any, or leave the cell empty for bare steel.");
        }

        if (wet && degrees is null)
        {
            row.Fault("service_degC", "The surface is wet in service; state at which temperature.");
        }

        LineHazards? hazards = HazardList.Read(row);
        Temperature? service = degrees is { } c ? Temperature.FromDegreesCelsius(c) : null;
        return row.Faulty ? null : row.Try("service_degC", () => new SteelCondition(metal, windows, service, wet, run, hazards));
    }

    private WindowLayout? Windows(CsvRow row, string tag, ILay lay) => row.TextOr("windows", string.Empty) switch
    {
        Planned => row.Try("windows", () => WindowPlan.For(lay, RuleSet.Default)),
        Placed => places.LayOut(row, tag, lay),
        _ => null,
    };

    private static Length? Thickness(CsvRow row)
    {
        if (row.OptionalNumber("steel_mm") is not { } mm)
        {
            return null;
        }

        // The library says which steel its comparison takes.
        HotDipCoating? probe = row.Try("steel_mm", () => HotDipCoating.Iso1461(Length.FromMillimeters(mm), HotDipValue.Mean));
        return probe is null ? null : Length.FromMillimeters(mm);
    }

    private (ZincExposure Zinc, SurveyExposure? Named)? Exposure(CsvRow row)
    {
        string? place = row.Choice("exposure", this.exposures);
        double? rate = row.OptionalNumber("rate_um_a");
        if (row.Faulty || place is null)
        {
            return null;
        }

        if (place == Measured)
        {
            if (rate is not { } measured)
            {
                row.Fault("rate_um_a", "The exposure 'measured' needs its first-year zinc rate.");
                return null;
            }

            ZincExposure? zinc = row.Try("rate_um_a", () => ZincExposure.FromMeasurement(
                CorrosionRate.FromMicrometersPerYear(measured), "zinc coupons on site, as the survey states"));
            return zinc is null ? null : (zinc, null);
        }

        if (rate is not null)
        {
            row.Fault("rate_um_a", "A rate goes with the exposure 'measured' only.");
        }

        return Exposures.TryGetValue(place, out CorrosivityCategory? category) && category is { } known
            ? (ZincExposure.FromCategory(known), null)
            : (named[place].Zinc, named[place]);
    }
}
