namespace SacrificialTape.Galvanic;

/// <summary>How a surface in the open air came to be wet.</summary>
public enum Wetting
{
    /// <summary>Air at 100 % relative humidity.</summary>
    Humidity = 0,

    /// <summary>Dew.</summary>
    Dew,

    /// <summary>Rain.</summary>
    Rain,
}
