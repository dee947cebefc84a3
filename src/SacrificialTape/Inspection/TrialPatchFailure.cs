namespace SacrificialTape.Inspection;

/// <summary>Where a trial patch parted when it was pulled off.</summary>
public enum TrialPatchFailure
{
    /// <summary>Within the adhesive, some left on steel and on foil.</summary>
    WithinAdhesive = 0,

    /// <summary>The foil tore first.</summary>
    FoilTore,

    /// <summary>The adhesive came clean off the steel or the paint.</summary>
    CleanOffSurface,

    /// <summary>Old paint, rust or scale came off with it.</summary>
    TookPaintOrScale,
}
