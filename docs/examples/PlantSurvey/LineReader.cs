using SacrificialTape.Contact;
using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace PlantSurvey;

/// <summary>The lines of the survey: lines.csv.</summary>
internal sealed class LineReader(SurveyChoices choices, IReadOnlyDictionary<string, StripStock> stock)
{
    internal const string File = "lines.csv";

    internal static readonly string[] Columns =
    [
        "line", "shape", "size", "length_m", "angle_deg", "radius_mm", "run", "metal", "windows", "window_cm2", "service_degC", "wet", "exposure", "rate_um_a",
        "life_a", "stock", "lay", "lap_by", "lap_mm", "ends", "passes", "layers", "method", "girth_welds", "long_welds", "weld_stock",
    ];

    private static readonly Dictionary<string, Orientation> Runs = new()
    {
        ["level"] = Orientation.Horizontal,
        ["upright"] = Orientation.Vertical,
    };

    private static readonly Dictionary<string, SubstrateMetal> Metals = new()
    {
        ["steel"] = SubstrateMetal.CarbonSteel,
        ["high-strength"] = SubstrateMetal.HighStrengthSteel,
        ["stainless"] = SubstrateMetal.StainlessSteel,
        ["aluminium"] = SubstrateMetal.Aluminium,
        ["magnesium"] = SubstrateMetal.Magnesium,
    };

    private static readonly Dictionary<string, CorrosivityCategory?> Exposures = Enum.GetValues<CorrosivityCategory>()
        .ToDictionary(static category => category.ToString(), static category => (CorrosivityCategory?)category);

    private static readonly Dictionary<string, bool> YesOrNo = new() { ["yes"] = true, ["no"] = false };

    private static readonly Dictionary<string, ApplicationMethod> Methods = new()
    {
        ["hand"] = ApplicationMethod.ByHand,
        ["head"] = ApplicationMethod.WrappingHead,
    };

    private static readonly Dictionary<string, SpiralEnds> Ends = new()
    {
        ["flush"] = SpiralEnds.TrimmedFlush,
        ["level"] = SpiralEnds.LevelTurns(1),
        ["level2"] = SpiralEnds.LevelTurns(2),
    };

    private static readonly Dictionary<string, Func<Length, SpiralSetting>> LapsBy = new()
    {
        ["across"] = SpiralSetting.FromTrueLap,
        ["along"] = SpiralSetting.FromLapAlongPipe,
        ["marks"] = SpiralSetting.FromMarks,
    };

    private static readonly string[] Lays = ["spiral", "rings", "along"];

    private static readonly string[] Shapes = ["pipe", "bend"];

    static LineReader() => Exposures["measured"] = null;

    internal SurveyLine? Read(CsvRow row)
    {
        string tag = row.Text("line");
        bool bend = row.Choice("shape", Shapes.ToDictionary(static shape => shape), "pipe") == "bend";
        Surface? surface = bend ? ShapeReader.Bend(row) : ShapeReader.Pipe(row);
        SteelCondition? steel = Steel(row);
        ZincExposure? exposure = Exposure(row);
        double years = row.Number("life_a");
        int layers = row.WholeOr("layers", 1);
        StripStock strip = row.Choice("stock", stock);
        ILay? lay = this.Lay(row, surface, strip);
        WeldWork? welds = this.Welds(row, surface);
        if (row.Faulty || lay is null || steel is null || exposure is null)
        {
            return null;
        }

        if (steel.WindowsInPaint is { } windows)
        {
            _ = row.Try("windows", () => new BareContact(surface!.Area, windows));
        }

        if (row.Faulty)
        {
            return null;
        }

        Duration life = Duration.FromYears365(years);
        return row.Try("life_a", () => new SurveyLine(tag, lay, exposure, Lifetime.Of(life), steel, welds, layers));
    }

    private static SteelCondition? Steel(CsvRow row)
    {
        SubstrateMetal metal = row.Choice("metal", Metals, "steel");
        Orientation run = row.Choice("run", Runs, "level");
        bool wet = row.Choice("wet", YesOrNo, "no");
        double? degrees = row.OptionalNumber("service_degC");
        ContactWindows? windows = null;
        if (row.TextOr("windows", string.Empty).Length > 0)
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

        Temperature? service = degrees is { } c ? Temperature.FromDegreesCelsius(c) : null;
        return row.Faulty ? null : row.Try("service_degC", () => new SteelCondition(metal, windows, service, wet, run));
    }

    private static ZincExposure? Exposure(CsvRow row)
    {
        CorrosivityCategory? category = row.Choice("exposure", Exposures);
        double? rate = row.OptionalNumber("rate_um_a");
        if (row.Faulty)
        {
            return null;
        }

        if (category is { } known)
        {
            if (rate is not null)
            {
                row.Fault("rate_um_a", "A rate goes with the exposure 'measured' only.");
            }

            return ZincExposure.FromCategory(known);
        }

        if (rate is not { } measured)
        {
            row.Fault("rate_um_a", "The exposure 'measured' needs its first-year zinc rate.");
            return null;
        }

        return row.Try("rate_um_a", () => ZincExposure.FromMeasurement(
            CorrosionRate.FromMicrometersPerYear(measured), "zinc coupons on site, as the survey states"));
    }

    private ILay? Lay(CsvRow row, Surface? surface, StripStock? strip)
    {
        string kind = row.Choice("lay", Lays.ToDictionary(static lay => lay));
        double lap = row.Number("lap_mm");
        int passes = row.WholeOr("passes", 1);
        ApplicationMethod method = row.Choice("method", Methods, "hand");
        SpiralEnds ends = row.Choice("ends", Ends, "flush");
        Func<Length, SpiralSetting> by = row.Choice("lap_by", LapsBy, "across");
        if (kind is "rings" or "along")
        {
            row.MustBeEmpty("lap_by", "The lap of rings and of strips along the pipe is always that across the strip; leave the cell empty.");
            row.MustBeEmpty("ends", "Only a spiral has ends to choose; leave the cell empty.");
        }

        if (row.Faulty || surface is null || strip is null)
        {
            return null;
        }

        Length leastLap = Length.FromMillimeters(lap);
        LayChoices? options = row.Try("passes", () => new LayChoices(choices.EndLap, choices.HandWander, passes, method));
        return options is null ? null : (surface, kind) switch
        {
            (StraightPipe pipe, "spiral") => row.Try<ILay>("lap_mm", () => new SpiralLay(pipe, strip, by(leastLap), ends, options), "length_m"),
            (StraightPipe pipe, "rings") => row.Try<ILay>("lap_mm", () => new RingLay(pipe, strip, leastLap, options)),
            (StraightPipe pipe, _) => row.Try<ILay>("lap_mm", () => new AlongPipeLay(pipe, strip, leastLap, options)),
            (Bend bend, "rings") => row.Try<ILay>("lap_mm", () => new BendRingLay(bend, strip, leastLap, options)),
            _ => row.Refuse<ILay>("lay", $"'{kind}' is not laid on a bend; rings are."),
        };
    }

    private WeldWork? Welds(CsvRow row, Surface? surface)
    {
        int girth = row.WholeOr("girth_welds", 0);
        int along = row.WholeOr("long_welds", 0);
        if (girth + along == 0)
        {
            row.MustBeEmpty("weld_stock", "There are no welds; state their number or leave the cell empty.");
            return null;
        }

        StripStock strip = row.Choice("weld_stock", stock);
        if (row.Faulty || surface is null)
        {
            return null;
        }

        if (along > 0 && surface is not StraightPipe)
        {
            return row.Refuse<WeldWork>("long_welds", "Welds along a bend are not counted; leave the cell empty.");
        }

        var seams = new List<WeldSeam>();
        if (girth > 0)
        {
            seams.Add(new GirthWelds(ShapeReader.DiameterOf(surface), girth));
        }

        if (along > 0 && surface is StraightPipe pipe)
        {
            seams.Add(new LongitudinalWelds(pipe.Length, along));
        }

        return new WeldWork(new ValueList<WeldSeam>(seams), strip, choices.EndLap);
    }
}
