using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>
/// A strip of width w wound on a pipe of circumference C = pi D. Angle theta between strip and circumference, advance p
/// along the axis per turn, advance e across the strip: tan(theta) = p / C, e = p cos(theta), sin(theta) = e / C.
/// Doubles in mm; arguments are checked by the callers.
/// </summary>
internal static class SpiralKernel
{
    internal static SpiralSolution Solve<TSteps>(
        double diameterMm, double widthMm, LapConvention convention, double valueMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double circumference = PipeKernel.CircumferenceMm(diameterMm, steps);
        SpiralSolution spiral = convention == LapConvention.TrueLap
            ? FromTrueLap(circumference, widthMm, valueMm, steps)
            : FromAdvance(circumference, widthMm, AdvanceMm(circumference, widthMm, convention, valueMm, steps), steps);
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.TrueLap, [widthMm, spiral.TrueAdvanceMm], spiral.TrueLapMm);
            steps.Add(SpiralFormulas.LapAlongPipe, [widthMm, spiral.AngleDegrees, spiral.AdvanceMm], spiral.LapAlongPipeMm);
            steps.Add(SpiralFormulas.LayersOnAverage, [widthMm, spiral.TrueAdvanceMm], spiral.LayersOnAverage);
        }

        return spiral;
    }

    /// <summary>
    /// The same in lanes, by the same operations in the same order. Not a number where there is no such spiral: the ranges are
    /// those of <see cref="SpiralGeometry"/> and <see cref="SpiralSettingCheck"/>.
    /// </summary>
    internal static SpiralLanes<TLanes> Solve<TLanes>(TLanes diameterMm, TLanes widthMm, LapConvention convention, TLanes valueMm)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes circumference = Math.PI * diameterMm;
        TLanes holds = (diameterMm >= 1) & (diameterMm <= 100_000) & (widthMm >= 1) & (widthMm <= 2000)
            & Allowed(circumference, widthMm, convention, valueMm);
        if (convention == LapConvention.TrueLap)
        {
            TLanes across = widthMm - valueMm;
            TLanes sine = across / circumference;
            return new(circumference, widthMm, across / TLanes.Sqrt((1 - sine) * (1 + sine)), across, holds);
        }

        TLanes advance = convention switch
        {
            LapConvention.Advance => valueMm,
            LapConvention.LapBetweenMarks => widthMm - valueMm,
            _ => FromLapAlongPipe(circumference, widthMm, valueMm),
        };
        TLanes tangent = advance / circumference;
        return new(circumference, widthMm, advance, advance / TLanes.Sqrt(1 + (tangent * tangent)), holds);
    }

    /// <summary>Lap across the strip: e = w - o, sin(theta) = e / C, p = e / cos(theta). Needs e below C.</summary>
    private static SpiralSolution FromTrueLap<TSteps>(double circumference, double width, double lap, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double trueAdvance = width - lap;
        double sine = trueAdvance / circumference;
        double advance = trueAdvance / Math.Sqrt((1 - sine) * (1 + sine));
        var spiral = new SpiralSolution(circumference, width, advance, trueAdvance);
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.TrueAdvanceFromLap, [width, lap], trueAdvance);
            steps.Add(SpiralFormulas.AngleFromTrueAdvance, [trueAdvance, circumference], spiral.AngleDegrees);
            steps.Add(SpiralFormulas.AdvanceFromTrueAdvance, [trueAdvance, spiral.AngleDegrees], advance);
        }

        return spiral;
    }

    private static SpiralSolution FromAdvance<TSteps>(double circumference, double width, double advance, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double tangent = advance / circumference;
        double trueAdvance = advance / Math.Sqrt(1 + (tangent * tangent));
        var spiral = new SpiralSolution(circumference, width, advance, trueAdvance);
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.AngleFromAdvance, [advance, circumference], spiral.AngleDegrees);
            steps.Add(SpiralFormulas.TrueAdvanceFromAdvance, [advance, spiral.AngleDegrees], trueAdvance);
        }

        return spiral;
    }

    private static double AdvanceMm<TSteps>(
        double circumference, double width, LapConvention convention, double value, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (convention == LapConvention.Advance)
        {
            return value;
        }

        if (convention == LapConvention.LapBetweenMarks)
        {
            double advance = width - value;
            if (TSteps.Records)
            {
                steps.Add(SpiralFormulas.AdvanceFromMarks, [width, value], advance);
            }

            return advance;
        }

        // The root of w / cos(theta) - p = o that tends to w - o on a large pipe, in the form that loses no digits.
        double rest = (width - value) * (width + value);
        double share = width / circumference;
        // At the widest strip that has a solution the root is zero; rounding must not take it below.
        double root = Math.Sqrt(Math.Max(0, (value * value) + ((1 - (share * share)) * rest)));
        double solved = rest / (value + root);
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.AdvanceFromLapAlongPipe, [width, value, circumference], solved);
        }

        return solved;
    }

    private static TLanes FromLapAlongPipe<TLanes>(TLanes circumference, TLanes width, TLanes value)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes rest = (width - value) * (width + value);
        TLanes share = width / circumference;
        TLanes root = TLanes.Sqrt(TLanes.Max(0, (value * value) + ((1 - (share * share)) * rest)));
        return rest / (value + root);
    }

    private static TLanes Allowed<TLanes>(TLanes circumference, TLanes width, LapConvention convention, TLanes value)
        where TLanes : struct, ILanes<TLanes>
    {
        if (convention == LapConvention.Advance)
        {
            TLanes touching = width * circumference / TLanes.Sqrt((circumference - width) * (circumference + width));
            return (value > 0) & (value <= double.MaxValue) & ((width >= circumference) | WithAllowance.AtMost(value, touching));
        }

        TLanes lap = (value >= 0) & (value < width);
        return convention switch
        {
            LapConvention.TrueLap => lap & (width - value < circumference),
            LapConvention.LapAlongPipe => lap & ((value > 0) | (width < circumference))
                & WithAllowance.AtMost(width, TLanes.Sqrt((circumference * circumference) + (value * value))),
            _ => lap,
        };
    }

    /// <summary>How often the middle of the strip goes round from end to end of the pipe, ends trimmed flush: h / p.</summary>
    internal static double TurnsFlush<TSteps>(in SpiralSolution spiral, double heightMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double turns = heightMm / spiral.AdvanceMm;
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.TurnsFlush, [heightMm, spiral.AdvanceMm], turns);
        }

        return turns;
    }

    /// <summary>
    /// The same between level turns: the middle of a square end stands half of w cos(theta) from the end of the pipe.
    /// </summary>
    internal static double TurnsBetweenLevelTurns<TSteps>(in SpiralSolution spiral, double heightMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double turns = (heightMm - (spiral.WidthMm * spiral.Cosine)) / spiral.AdvanceMm;
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.TurnsLevel, [heightMm, spiral.WidthMm, spiral.AngleDegrees, spiral.AdvanceMm], turns);
        }

        return turns;
    }

    /// <summary>Strip of one pass whose slanted ends are trimmed flush: h / sin(theta) + w / tan(theta).</summary>
    internal static double StripFlushMm<TSteps>(in SpiralSolution spiral, double heightMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = (heightMm / spiral.Sine) + TrimMm(spiral);
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.StripFlush, [heightMm, spiral.WidthMm, spiral.AngleDegrees], strip);
        }

        return strip;
    }

    /// <summary>What is trimmed off the two slanted ends together: w / tan(theta) of strip.</summary>
    internal static double TrimMm(in SpiralSolution spiral) => spiral.WidthMm / spiral.Tangent;

    /// <summary>Strip of the spiral that ends square under level turns: h / sin(theta) - w / tan(theta).</summary>
    internal static double StripBetweenLevelTurnsMm<TSteps>(in SpiralSolution spiral, double heightMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = (heightMm / spiral.Sine) - TrimMm(spiral);
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.StripLevel, [heightMm, spiral.WidthMm, spiral.AngleDegrees], strip);
        }

        return strip;
    }

    /// <summary>
    /// Area that a square-ended spiral leaves bare at one end of the pipe: a right triangle with the legs C cos(theta)
    /// and e. The level turn there covers it.
    /// </summary>
    internal static double EndWedgeMm2(in SpiralSolution spiral) =>
        spiral.CircumferenceMm * spiral.Cosine * spiral.TrueAdvanceMm / 2;

    /// <summary>Layers everywhere of one pass away from its ends: floor(w / (e + wander)), since the hand may lose on every lap.</summary>
    internal static int LayersInBody<TSteps>(in SpiralSolution spiral, double wanderMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double layers = WithAllowance.Floor(spiral.WidthMm / (spiral.TrueAdvanceMm + wanderMm));
        if (TSteps.Records)
        {
            steps.Add(SpiralFormulas.LayersInBody, [spiral.WidthMm, wanderMm, spiral.TrueAdvanceMm], layers);
        }

        return (int)layers;
    }

    /// <summary>
    /// Layers everywhere of all passes. Within one advance of an end that is closed by level turns lie only those turns.
    /// Where they stop, a strip width from the end, the spiral lies as in its body: its square end reaches back by what
    /// the slant takes away, so that there too w / e turns are counted.
    /// </summary>
    internal static int LayersEverywhere<TSteps>(int passes, int inBody, int levelTurns, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        int layers = passes * (levelTurns == 0 ? inBody : Math.Min(levelTurns, inBody));
        if (TSteps.Records)
        {
            if (levelTurns == 0)
            {
                steps.Add(SpiralFormulas.LayersFlush, [passes, inBody], layers);
            }
            else
            {
                steps.Add(SpiralFormulas.LayersLevel, [passes, levelTurns, inBody], layers);
            }
        }

        return layers;
    }
}
