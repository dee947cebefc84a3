using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>A strip along every weld seam, pressed on before the main lay.</summary>
public static class WeldStrips
{
    /// <summary>The strips for a number of like seams.</summary>
    /// <param name="seams">The seams.</param>
    /// <param name="stock">The strip; it should be wide enough to reach clean steel on both sides of the weld.</param>
    /// <param name="endLap">Lap of a closed strip on its own end, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The end lap is negative.</exception>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.RingLength))]
    public static Strip For(WeldSeam seams, StripStock stock, Length endLap)
    {
        ArgumentNullException.ThrowIfNull(seams);
        ArgumentNullException.ThrowIfNull(stock);
        double lap = AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(endLap), nameof(endLap));
        return Strip.Computed(
            stock,
            LengthMm(seams, lap, default(NoSteps)),
            seams.Count,
            StripPurpose.Weld,
            !seams.Closed,
            seams.LengthMm(default(NoSteps)),
            0);
    }

    /// <summary>How far a strip that lies centred on a weld reaches beyond it on each side; negative when it does not cover it.</summary>
    /// <param name="stock">The strip.</param>
    /// <param name="face">Width of the weld over the strip's line: its cap, or <see cref="FilletWelds.Face"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is negative.</exception>
    [BasisOf(typeof(WeldStripFormulas), nameof(WeldStripFormulas.Reach))]
    public static Length Reach(StripStock stock, Length face)
    {
        ArgumentNullException.ThrowIfNull(stock);
        double weld = AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(face), nameof(face));
        return Length.FromMillimeters(WeldStripKernel.ReachMm(stock.WidthMm, weld));
    }

    /// <summary>Whether the strip is wide enough for the weld.</summary>
    /// <param name="stock">The strip.</param>
    /// <param name="face">Width of the weld over the strip's line.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the weld.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is negative.</exception>
    public static IEnumerable<Finding> Judge(StripStock stock, Length face, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return rules[RuleIds.MinimumWeldReach].Judge(Measure.Of(Reach(stock, face)), subject) is { } finding ? [finding] : [];
    }

    /// <summary>What the crew is told to cut and where to lay it.</summary>
    /// <param name="seams">The seams.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="endLap">Lap of a closed strip on its own end, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The end lap is negative.</exception>
    public static string Instruction(WeldSeam seams, StripStock stock, Length endLap)
    {
        Strip strip = For(seams, stock, endLap);
        string end = seams.Closed
            ? string.Create(CultureInfo.InvariantCulture, $", lapped {UnitConversions.Millimeters(endLap):0.#} mm on itself")
            : string.Empty;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Press a strip {stock.WidthMm:0.#} mm wide and {strip.LengthUm / 1e6:0.00} m long on each of {seams.Count} weld(s) {seams.Place}, the weld in its middle{end}. Work it into the toes of the weld; snip it where it does not lie flat.");
    }

    internal static double LengthMm<TSteps>(WeldSeam seams, double endLapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double seam = seams.LengthMm(steps);
        return seams.Closed ? SpanKernel.RingLengthMm(seam, endLapMm, steps) : seam;
    }
}
