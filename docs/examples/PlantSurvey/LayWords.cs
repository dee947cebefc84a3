using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace PlantSurvey;

/// <summary>The words in the cell 'lay', and what each makes of a surface.</summary>
internal static class LayWords
{
    internal static IReadOnlyDictionary<string, LayBy> Round { get; } = new Dictionary<string, LayBy>
    {
        ["gores"] = static (surface, strip, lap, options) => new GoreLay(surface, strip, lap, options),
        ["strips"] = static (surface, strip, lap, options) => new MeridianStripLay(surface, strip, lap, choices: options),
        ["rings"] = static (surface, strip, lap, options) => new LatitudeRingLay(surface, strip, lap, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Eccentric { get; } = new Dictionary<string, LayBy>
    {
        ["strips"] = static (surface, strip, lap, options) => new EccentricReducerLay((EccentricReducer)surface, strip, lap, options),
    };

    // What laps on the next piece laps as the neighbouring strips do.
    internal static IReadOnlyDictionary<string, LayBy> Tee { get; } = new Dictionary<string, LayBy>
    {
        ["rings"] = static (surface, strip, lap, options) => new TeeLay((Tee)surface, strip, lap, lap, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Mitred { get; } = new Dictionary<string, LayBy>
    {
        ["rings"] = static (surface, strip, lap, options) => new MitredBendLay((MitredBend)surface, strip, lap, lap, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Flange { get; } = new Dictionary<string, LayBy>
    {
        ["faces"] = static (surface, strip, lap, options) => new FlangeLay((Flange)surface, strip, lap, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> FlatHead { get; } = new Dictionary<string, LayBy>
    {
        ["across"] = static (surface, strip, lap, options) => new FlatHeadLay((FlatHead)surface, strip, lap, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Shell { get; } = new Dictionary<string, LayBy>
    {
        ["rings"] = static (surface, strip, lap, options) => new ShellLay((Shell)surface, strip, ShellDirection.Round, lap, lap, options),
        ["along"] = static (surface, strip, lap, options) => new ShellLay((Shell)surface, strip, ShellDirection.AlongAxis, lap, lap, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Panel { get; } = new Dictionary<string, LayBy>
    {
        ["level"] = static (surface, strip, lap, options) => new PanelLay((Panel)surface, strip, PanelDirection.AlongWidth, lap, options),
        ["upright"] = static (surface, strip, lap, options) => new PanelLay((Panel)surface, strip, PanelDirection.AlongHeight, lap, options),
        ["better"] = static (surface, strip, lap, options) => PanelLay.BothWays((Panel)surface, strip, lap, options).Better,
    };

    internal static IReadOnlyDictionary<string, LayBy> Corrugated { get; } = new Dictionary<string, LayBy>
    {
        ["along"] = static (surface, strip, lap, options) => new CorrugatedLay((CorrugatedPanel)surface, strip, CorrugatedDirection.AlongFlutes, lap, options),
        ["across"] = static (surface, strip, lap, options) => new CorrugatedLay((CorrugatedPanel)surface, strip, CorrugatedDirection.AcrossFlutes, lap, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Section { get; } = new Dictionary<string, LayBy>
    {
        ["outline"] = static (surface, strip, lap, options) => new SectionLay((Section)surface, strip, lap, SectionPattern.RoundOutline, choices: options),
        ["faces"] = static (surface, strip, lap, options) => new SectionLay((Section)surface, strip, lap, SectionPattern.FaceByFace, choices: options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Hollow { get; } = new Dictionary<string, LayBy>(Section)
    {
        ["rings"] = static (surface, strip, lap, options) => new SectionRingLay((RectangularHollowSection)surface, strip, lap, options),
    };

    // Outside, a circular hollow section is a pipe.
    internal static IReadOnlyDictionary<string, LayBy> Tube { get; } = new Dictionary<string, LayBy>
    {
        ["rings"] = static (surface, strip, lap, options) => new RingLay((StraightPipe)surface, strip, lap, options),
        ["along"] = static (surface, strip, lap, options) => new AlongPipeLay((StraightPipe)surface, strip, lap, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Edge { get; } = new Dictionary<string, LayBy>
    {
        ["fold"] = static (surface, strip, _, options) => EdgeLay.OfSheet((SheetEdge)surface, strip, choices: options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Opening { get; } = new Dictionary<string, LayBy>
    {
        ["fold"] = static (surface, strip, _, options) => EdgeLay.OfOpening((WindowOpening)surface, strip, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Strap { get; } = new Dictionary<string, LayBy>
    {
        ["along"] = static (surface, strip, lap, options) => new StrapLay((PipeStrap)surface, strip, lap, options),
    };

    internal static IReadOnlyDictionary<string, LayBy> Measured { get; } = new Dictionary<string, LayBy>
    {
        ["area"] = static (surface, strip, lap, options) => new MeasuredAreaLay((MeasuredArea)surface, strip, lap, options),
    };
}
