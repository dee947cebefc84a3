namespace SacrificialTape.Rules;

/// <content>Lays on flat, corrugated and large curved steel.</content>
public static partial class RuleIds
{
    /// <summary>Narrowest face of a folded sheet that a strip is pressed on.</summary>
    public const string MinimumFoldFace = "lay.fold-face.minimum";

    /// <summary>Narrowest mouth of a valley that a roller reaches into.</summary>
    public const string MinimumValleyOpening = "lay.valley-opening.minimum";

    /// <summary>Most inside corners that a strip along the flutes is pressed into.</summary>
    public const string MaximumInsideCorners = "lay.inside-corners.maximum";

    /// <summary>Tape of two faces meets at an edge without a lap.</summary>
    public const string EdgeJoint = "lay.edge-joint";

    /// <summary>Tape on a flange of a bolted joint.</summary>
    public const string FlangedJoint = "lay.flanged-joint";

    /// <summary>Openings whose place is not stated: what is cut out of the tape is an average.</summary>
    public const string OpeningsWithoutPlace = "lay.openings-without-place";

    /// <summary>Tape for an area that was measured, without a lay that could be checked.</summary>
    public const string TapeByMeasuredArea = "lay.measured-area";
}
