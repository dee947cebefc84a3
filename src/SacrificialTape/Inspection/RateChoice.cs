namespace SacrificialTape.Inspection;

/// <summary>Which rate a remaining life is counted with.</summary>
public enum RateChoice
{
    /// <summary>The larger of the long-term and the short-term rate: the safer, and the default.</summary>
    Larger = 0,

    /// <summary>From when the tape was laid until now.</summary>
    LongTerm,

    /// <summary>From the inspection before until now.</summary>
    ShortTerm,
}
