namespace SacrificialTape.SiteConditions;

/// <summary>Rust that formed after cleaning with water, by ISO 8501-4.</summary>
public enum FlashRust
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>L: light, firmly adherent.</summary>
    Light,

    /// <summary>M: medium, hides the surface, marks a hand lightly.</summary>
    Medium,

    /// <summary>H: heavy, loose, marks a hand.</summary>
    Heavy,
}
