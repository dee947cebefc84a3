namespace SacrificialTape.SiteConditions;

/// <summary>How rough blasted steel is, by ISO 8503-2.</summary>
public enum ProfileGrade
{
    /// <summary>Below segment 1.</summary>
    FinerThanFine = 0,

    /// <summary>Segment 1 up to, without, segment 2.</summary>
    Fine,

    /// <summary>Segment 2 up to, without, segment 3.</summary>
    Medium,

    /// <summary>Segment 3 up to, without, segment 4.</summary>
    Coarse,

    /// <summary>Segment 4 and above.</summary>
    CoarserThanCoarse,
}
