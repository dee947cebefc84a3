namespace SacrificialTape.SiteConditions;

/// <summary>Which comparator of ISO 8503-1 a profile is held against: by what was blasted with.</summary>
public enum ProfileComparator
{
    /// <summary>Grit.</summary>
    Grit = 0,

    /// <summary>Shot.</summary>
    Shot,
}
