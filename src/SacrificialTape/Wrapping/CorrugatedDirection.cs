namespace SacrificialTape.Wrapping;

/// <summary>How strips run on a corrugated sheet.</summary>
public enum CorrugatedDirection
{
    /// <summary>Along the flutes: straight strips that are folded along their length.</summary>
    AlongFlutes = 0,

    /// <summary>Across the flutes: strips that follow every fold.</summary>
    AcrossFlutes,
}
