namespace SacrificialTape.Galvanic;

/// <summary>Metal of a buried anode and state of what it protects, for which a constant of the output formula is known.</summary>
public enum SoilAnodeKind
{
    /// <summary>Magnesium on a well coated structure, 120 000 mA.ohm.cm (read).</summary>
    MagnesiumWellCoated = 0,

    /// <summary>Zinc on a coated structure, 50 000 mA.ohm.cm (recalled, check before use).</summary>
    ZincCoated,

    /// <summary>Zinc on a bare structure, 40 000 mA.ohm.cm (recalled, check before use).</summary>
    ZincBare,
}
