using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace PlantSurvey;

/// <summary>Straight pipe and bends: lines.csv.</summary>
internal sealed class PipeSheet : ShapeSheet
{
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
        ["marks"] = SpiralSetting.FromLapBetweenMarks,
    };

    private static readonly Dictionary<string, string> Lays = Same("spiral", "rings", "along");

    private static readonly Dictionary<string, string> Shapes = Same("pipe", "bend");

    internal override string File => "lines.csv";

    internal override IReadOnlyList<string> Columns => ["size"];

    internal override IReadOnlyList<string> Optional =>
        ["shape", "length_m", "angle_deg", "radius_mm", "lap_by", "ends", "girth_welds", "long_welds", "weld_stock"];

    internal override string WorkOn(Surface surface) => surface is Bend ? "bend" : "pipe";

    internal override ILay? Lay(CsvRow row, StripStock? strip, LayChoices? options, ValueList<StayClear> bands)
    {
        bool bent = row.Choice("shape", Shapes, "pipe") == "bend";
        Surface? surface = bent ? ShapeReader.Bend(row) : ShapeReader.Pipe(row);
        string kind = row.Choice("lay", Lays);
        double lap = row.Number("lap_mm");
        SpiralEnds ends = row.Choice("ends", Ends, "flush");
        Func<Length, SpiralSetting> by = row.Choice("lap_by", LapsBy, "across");
        if (bent && kind == "spiral")
        {
            row.MustBeEmpty("lap_by", "The lap of a spiral on a bend is that across the strip, on its outside; leave the cell empty.");
            row.MustBeEmpty("ends", "A spiral on a bend runs on from the straight pipe; leave the cell empty.");
        }

        if (kind is "rings" or "along")
        {
            row.MustBeEmpty("lap_by", "The lap of rings and of strips along the pipe is always that across the strip; leave the cell empty.");
            row.MustBeEmpty("ends", "Only a spiral has ends to choose; leave the cell empty.");
        }

        if (row.Faulty || surface is null || strip is null || options is null)
        {
            return null;
        }

        var leastLap = Length.FromMillimeters(lap);
        if (bands.Count > 0 && surface is not StraightPipe)
        {
            return row.Refuse<ILay>("clear", "Only straight pipe has bands all round; state a spot.");
        }

        ILay OnPipe(StraightPipe pipe) => kind switch
        {
            "spiral" => new SpiralLay(pipe, strip, by(leastLap), ends, options),
            "rings" => new RingLay(pipe, strip, leastLap, options),
            _ => new AlongPipeLay(pipe, strip, leastLap, options),
        };

        return (surface, kind) switch
        {
            (StraightPipe pipe, _) when bands.Count > 0 => row.Try<ILay>(
                "lap_mm", () => InterruptedLay.Of(new InterruptedPipe(pipe, bands), OnPipe), ("pipe", "length_m"), ("bands", "clear")),
            (StraightPipe pipe, _) => row.Try("lap_mm", () => OnPipe(pipe), ("pipe", "length_m")),
            (Bend bend, "spiral") => row.Try<ILay>("lap_mm", () => new BendSpiralLay(bend, strip, leastLap, options), ("stock", "stock")),
            (Bend bend, "rings") => row.Try<ILay>("lap_mm", () => new BendRingLay(bend, strip, leastLap, options), ("stock", "stock")),
            _ => row.Refuse<ILay>("lay", $"'{kind}' is not laid on a bend; rings or a spiral are."),
        };
    }

    internal override WeldWork? Welds(CsvRow row, ILay? lay, IReadOnlyDictionary<string, StripStock> stock, Length endLap)
    {
        int girth = row.WholeOr("girth_welds", 0);
        int along = row.WholeOr("long_welds", 0);
        if (girth + along == 0)
        {
            row.MustBeEmpty("weld_stock", "There are no welds; state their number or leave the cell empty.");
            return null;
        }

        StripStock strip = row.Choice("weld_stock", stock);
        if (row.Faulty || lay is null)
        {
            return null;
        }

        if (along > 0 && lay.Surface is not StraightPipe)
        {
            return row.Refuse<WeldWork>("long_welds", "Welds along are counted on straight pipe without bands only; leave the cell empty.");
        }

        var seams = new List<WeldSeam>();
        if (girth > 0)
        {
            seams.Add(new GirthWelds(ShapeReader.DiameterOf(lay.Surface), girth));
        }

        if (along > 0 && lay.Surface is StraightPipe pipe)
        {
            seams.Add(new LongitudinalWelds(pipe.Length, along));
        }

        return new WeldWork(new ValueList<WeldSeam>(seams), strip, endLap);
    }
}
