namespace SacrificialTape.Rules;

/// <content>Readings of foil that has been in service, and patches.</content>
public static partial class RuleIds
{
    /// <summary>A reading is thicker than the foil and its tolerance.</summary>
    public const string ReadingAboveFoil = "readings.above-foil";

    /// <summary>Corrosion products were not removed before a reading.</summary>
    public const string ReadingNotCleaned = "readings.not-cleaned";

    /// <summary>A reading lies farther from the others than chance explains.</summary>
    public const string ReadingOutlier = "readings.outlier";

    /// <summary>There is a single reading.</summary>
    public const string SingleReading = "readings.single";

    /// <summary>The lower tolerance limit is at or below the thickness required.</summary>
    public const string LimitBelowRequired = "readings.limit-below-required";

    /// <summary>The readings show no loss, so no life can be told.</summary>
    public const string LifeUndetermined = "readings.life-undetermined";

    /// <summary>The foil is at or below the thickness required.</summary>
    public const string FoilUsedUp = "readings.foil-used-up";

    /// <summary>Zinc goes faster than predicted.</summary>
    public const string FasterThanPredicted = "readings.faster-than-predicted";

    /// <summary>Share of the remaining life after which to look again.</summary>
    public const string InspectionLifeShare = "readings.next-inspection.life-share";

    /// <summary>Longest time to the next inspection.</summary>
    public const string LongestInspectionInterval = "readings.next-inspection.longest";

    /// <summary>Least share of the whole area that was sampled for greatest losses.</summary>
    public const string ExtremeSampleShare = "readings.extreme.sample-share.minimum";

    /// <summary>Longest return period of greatest losses.</summary>
    public const string ExtremeReturnPeriod = "readings.extreme.return-period.maximum";

    /// <summary>The margin of a patch is less than an ordinary lap.</summary>
    public const string PatchBelowLap = "patch.margin.below-lap";

    /// <summary>Two patches lie over each other.</summary>
    public const string PatchesOverlap = "patch.overlap";

    /// <summary>A patch is wider than the strip it is cut from.</summary>
    public const string PatchWiderThanStrip = "patch.wider-than-strip";

    /// <summary>Share of the area above which patching is no longer worth it.</summary>
    public const string PatchedShare = "patch.area-share.maximum";
}
