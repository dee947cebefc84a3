namespace SacrificialTape.Galvanic;

/// <summary>What bare steel lies in when its current demand is taken from the published table.</summary>
public enum DemandMedium
{
    /// <summary>Soil below 1 000 ohm.cm (the label of this row was lost in the copy that was read, and is presumed).</summary>
    SoilBelow1000OhmCm = 0,

    /// <summary>Soil of 1 000 to 10 000 ohm.cm.</summary>
    Soil1000To10000OhmCm,

    /// <summary>Soil of 10 000 to 30 000 ohm.cm (the label of this row was lost in the copy that was read, and is presumed).</summary>
    Soil10000To30000OhmCm,

    /// <summary>Soil above 30 000 ohm.cm.</summary>
    SoilAbove30000OhmCm,

    /// <summary>Highly aggressive soil with anaerobic bacteria.</summary>
    SoilWithBacteria,

    /// <summary>Still fresh water.</summary>
    FreshWaterStill,

    /// <summary>Moving fresh water.</summary>
    FreshWaterMoving,

    /// <summary>Turbulent or hot fresh water.</summary>
    FreshWaterTurbulentOrHot,

    /// <summary>Still seawater.</summary>
    SeawaterStill,

    /// <summary>Moving seawater.</summary>
    SeawaterMoving,

    /// <summary>Concrete.</summary>
    Concrete,
}
