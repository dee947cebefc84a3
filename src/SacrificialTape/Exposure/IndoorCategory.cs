namespace SacrificialTape.Exposure;

/// <summary>Corrosivity category of an indoor atmosphere of low corrosivity, by a year's loss of a metal.</summary>
public enum IndoorCategory
{
    /// <summary>Very low indoor corrosivity.</summary>
    IC1 = 1,

    /// <summary>Low indoor corrosivity.</summary>
    IC2,

    /// <summary>Medium indoor corrosivity.</summary>
    IC3,

    /// <summary>High indoor corrosivity.</summary>
    IC4,

    /// <summary>Very high indoor corrosivity.</summary>
    IC5,
}
