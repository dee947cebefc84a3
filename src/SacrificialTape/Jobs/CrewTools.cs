using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Jobs;

/// <summary>The tool for rolling down, from the trade's common practice (no source).</summary>
internal static class CrewTools
{
    private const string Magnetic =
        "Roll down every strip over its whole width with the magnetic roller, edges and laps last. It clings to carbon steel only; tether it wherever it could fall, overhead above all, and keep it away from pacemakers and instruments.";

    private const string ByHand =
        "Roll down every strip over its whole width by hand roller with firm, even pressure, edges and laps last; a magnetic roller does not cling to this metal.";

    internal static string RollDown(SurveyLine line) => Tool(line) + " Foil edges cut: wear gloves.";

    private static string Tool(SurveyLine line) => line.Lay.Surface switch
    {
        SheetEdge or WindowOpening =>
            "Roll the strip round the edge with an edge roller, first the edge itself, then both faces outward; cut edges of sheet are sharp.",
        Panel or CorrugatedPanel or Shell or Head or MeasuredArea => line.Steel.Metal is SubstrateMetal.CarbonSteel or SubstrateMetal.HighStrengthSteel
            ? Magnetic
            : ByHand,
        Section or PipeStrap or Flange =>
            "Roll down face by face with a hand roller, folds with an edge roller, laps last.",
        _ when line.Lay is SpiralLay { Choices.Method: ApplicationMethod.WrappingHead } =>
            "The wrapping head, set to the outside diameter, presses the strip on as it goes: hold its pull even, then go over laps and ends with a ring roller. Keep hands and loose clothing out of the turning head.",
        _ => "Roll down every strip over its whole width with a ring roller and firm, even pressure, edges and laps last.",
    };
}
