using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>The work of one line as norms count it: its lay, and its welds apart.</summary>
internal static class LineWork
{
    internal static IEnumerable<LabourWork> Of(SurveyLine line, string surface)
    {
        yield return new LabourWork(
            new LabourKind(Purpose(line.LayStrips), Method(line.Lay), surface), Area.FromSquareMeters(line.CoveredM2), Total(line.LayStrips), Pieces(line.LayStrips));
        if (line.Welds is { } welds)
        {
            double steelM2 = welds.Strips.Sum(static strip => UnitConversions.Meters(strip.Cover) * strip.Count * strip.Stock.WidthMm / 1000);
            yield return new LabourWork(
                new LabourKind(StripPurpose.Weld, ApplicationMethod.ByHand, surface), Area.FromSquareMeters(steelM2), Total(welds.Strips), Pieces(welds.Strips));
        }
    }

    /// <summary>How a lay is laid. Lays of a host do not say, and are laid by hand.</summary>
    internal static ApplicationMethod Method(ILay lay) => lay switch
    {
        SpiralPairLay pair => Method(pair.First),
        InterruptedLay interrupted => Method(interrupted.Spans[0]),
        _ => Choices(lay)?.Method ?? ApplicationMethod.ByHand,
    };

    private static LayChoices? Choices(ILay lay) => lay switch
    {
        SpiralLay one => one.Choices,
        ParallelLay one => one.Choices,
        RevolvedLay one => one.Choices,
        BendRingLay one => one.Choices,
        BendSpiralLay one => one.Choices,
        MitredBendLay one => one.Choices,
        EccentricReducerLay one => one.Choices,
        TeeLay one => one.Choices,
        FlangeLay one => one.Choices,
        FlatHeadLay one => one.Choices,
        PanelLay one => one.Choices,
        CorrugatedLay one => one.Choices,
        ShellLay one => one.Choices,
        SectionLay one => one.Choices,
        SectionRingLay one => one.Choices,
        StrapLay one => one.Choices,
        EdgeLay one => one.Choices,
        MeasuredAreaLay one => one.Choices,
        _ => null,
    };

    // What most of the strip is laid for: level turns at the ends of a spiral do not make it another kind of work.
    private static StripPurpose Purpose(ValueList<Strip> strips) => strips
        .GroupBy(static strip => strip.Purpose)
        .MaxBy(static group => group.Sum(static strip => (double)strip.LengthUm * strip.Count))?.Key ?? StripPurpose.Other;

    private static Length Total(ValueList<Strip> strips) => Length.FromMeters(strips.Sum(static strip => (double)strip.LengthUm * strip.Count) / 1e6);

    private static long Pieces(ValueList<Strip> strips) => strips.Sum(static strip => (long)strip.Count);
}
