namespace SacrificialTape.Galvanic;

/// <summary>Whether a gap that zinc protects has a width.</summary>
public enum GapExtent
{
    /// <summary>There is a widest gap.</summary>
    Limited = 0,

    /// <summary>No gap is protected: even steel that touches zinc stays above the potential wanted.</summary>
    None,

    /// <summary>Every gap counts as protected: the steel alone lies at or below the potential wanted.</summary>
    Unlimited,
}
