namespace SacrificialTape.Rules;

/// <content>Inspection while and after laying, and batches of tape.</content>
public static partial class RuleIds
{
    /// <summary>Something of a plan was not inspected.</summary>
    public const string NotInspected = "inspection.not-inspected";

    /// <summary>Fewer readings than the sampling asks for.</summary>
    public const string TooFewReadings = "inspection.too-few-readings";

    /// <summary>80-20: least mean over nominal.</summary>
    public const string EightyTwentyMean = "inspection.80-20.mean.minimum";

    /// <summary>80-20: least reading over nominal.</summary>
    public const string EightyTwentyLeast = "inspection.80-20.reading.minimum";

    /// <summary>80-20: most readings below nominal.</summary>
    public const string EightyTwentyShare = "inspection.80-20.share-below.maximum";

    /// <summary>90/10: least reading over nominal.</summary>
    public const string NinetyTenLeast = "inspection.90-10.reading.minimum";

    /// <summary>90/10: most readings below nominal.</summary>
    public const string NinetyTenShare = "inspection.90-10.share-below.maximum";

    /// <summary>Spots: least spot over the least thickness.</summary>
    public const string SpotLeast = "inspection.spots.least.minimum";

    /// <summary>Spots: highest spot over the most thickness.</summary>
    public const string SpotMost = "inspection.spots.most.maximum";

    /// <summary>Spots: mean of an area outside the thicknesses stated.</summary>
    public const string AreaMeanOutside = "inspection.spots.area-mean";

    /// <summary>A reading above the most that was stated.</summary>
    public const string ThicknessAboveMost = "inspection.thickness-above-most";

    /// <summary>Peel of a trial patch below what was stated.</summary>
    public const string TrialPatchPeel = "trial-patch.peel";

    /// <summary>Contact resistance of a trial patch above what was stated.</summary>
    public const string TrialPatchResistance = "trial-patch.resistance";

    /// <summary>A trial patch that came clean off the surface.</summary>
    public const string TrialPatchOffSurface = "trial-patch.off-surface";

    /// <summary>A trial patch that took paint or scale with it.</summary>
    public const string TrialPatchTookPaint = "trial-patch.took-paint";

    /// <summary>A weld without its strip.</summary>
    public const string WeldsNotCovered = "inspection.welds-not-covered";

    /// <summary>Tape that is not rolled down.</summary>
    public const string NotRolledDown = "inspection.not-rolled-down";

    /// <summary>Creases left open.</summary>
    public const string OpenCreases = "inspection.creases-left";

    /// <summary>Bubbles left.</summary>
    public const string BubblesLeft = "inspection.bubbles-left";

    /// <summary>A last edge that faces up.</summary>
    public const string EndFacesUp = "inspection.end-faces-up";

    /// <summary>The batch of the tape is not known.</summary>
    public const string BatchUnknown = "batch.unknown";

    /// <summary>Until when the tape may be laid is not known.</summary>
    public const string BatchExpiryUnknown = "batch.expiry-unknown";

    /// <summary>Tape laid after its last day.</summary>
    public const string BatchExpired = "batch.expired";

    /// <summary>Tape said to be laid before it was made.</summary>
    public const string BatchLaidBeforeMade = "batch.laid-before-made";

    /// <summary>How the tape was stored is not known.</summary>
    public const string BatchStorageUnknown = "batch.storage-unknown";

    /// <summary>Tape stored outside what its data sheet allows.</summary>
    public const string BatchStorageOutside = "batch.storage-outside";
}
