namespace SacrificialTape.Costing;

/// <summary>What a cost is for.</summary>
public enum CostKind
{
    /// <summary>Rolls bought, spare included.</summary>
    Rolls = 0,

    /// <summary>Working time.</summary>
    Labour,

    /// <summary>Reaching the steel.</summary>
    Access,

    /// <summary>What is used up by the area.</summary>
    Consumables,

    /// <summary>Disposal of trim and offcuts.</summary>
    Waste,

    /// <summary>A cost of the user's own.</summary>
    Own,
}
