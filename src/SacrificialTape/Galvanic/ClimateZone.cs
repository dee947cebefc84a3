namespace SacrificialTape.Galvanic;

/// <summary>Climate of a sea by the temperature of its surface water, as the offshore code divides it.</summary>
public enum ClimateZone
{
    /// <summary>Above 20 degC.</summary>
    Tropical = 0,

    /// <summary>12 to 20 degC.</summary>
    SubTropical,

    /// <summary>7 to 12 degC.</summary>
    Temperate,

    /// <summary>Below 7 degC.</summary>
    Arctic,
}
