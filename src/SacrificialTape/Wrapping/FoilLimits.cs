using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>What a foil is bent round, held against its thickness. The adhesive under it is not counted, which is the safer side.</summary>
internal static class FoilLimits
{
    internal static IEnumerable<Finding> Judge(ILay lay, RuleSet rules, string subject)
    {
        double thickness = lay.Stock.Tape.Foil.ThicknessMm;
        if (SmallestDiameterMm(lay.Surface) is { } diameter
            && rules[RuleIds.MinimumWrapDiameter].Judge(new Measure(diameter / thickness, TradeUnit.One), subject) is { } wrap)
        {
            yield return wrap;
        }

        if (lay is IFolds folds
            && rules[RuleIds.MinimumFoldRadius].Judge(
                new Measure(UnitConversions.Millimeters(folds.SmallestFoldRadius) / thickness, TradeUnit.One), subject) is { } fold)
        {
            yield return fold;
        }
    }

    // Strips along a pipe are bent across, not along: to the foil it is the same.
    private static double? SmallestDiameterMm(Surface surface) => surface switch
    {
        StraightPipe pipe => pipe.DiameterMm,
        InterruptedPipe pipe => pipe.Pipe.DiameterMm,
        Bend bend => bend.DiameterMm,
        MitredBend bend => UnitConversions.Millimeters(bend.OutsideDiameter),
        ConcentricReducer reducer => reducer.SmallMm,
        EccentricReducer reducer => reducer.SmallMm,
        TaperedColumn column => UnitConversions.Millimeters(column.TopOutsideDiameter),
        Shell shell => UnitConversions.Millimeters(shell.OutsideDiameter),
        CircularHollowSection section => UnitConversions.Millimeters(section.OutsideDiameter),
        _ => null,
    };
}
