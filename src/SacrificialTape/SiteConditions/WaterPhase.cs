namespace SacrificialTape.SiteConditions;

/// <summary>What a saturation pressure is taken over.</summary>
public enum WaterPhase
{
    /// <summary>Liquid water, supercooled below 0 degC: the usual meaning of a dew point.</summary>
    Water = 0,

    /// <summary>Ice: a frost point.</summary>
    Ice,
}
