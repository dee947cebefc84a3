namespace SacrificialTape.Galvanic;

/// <summary>A salt whose solution a film may be.</summary>
public enum Salt
{
    /// <summary>Sodium chloride.</summary>
    SodiumChloride = 0,

    /// <summary>Magnesium chloride: what keeps a salty surface wet in dry air.</summary>
    MagnesiumChloride,

    /// <summary>Calcium chloride.</summary>
    CalciumChloride,
}
