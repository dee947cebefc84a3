namespace SacrificialTape.Contact;

/// <summary>How a resistance of the adhesive is known. A fresh joint says nothing of an old one.</summary>
public enum AdhesiveState
{
    /// <summary>Measured on a fresh joint.</summary>
    Fresh = 0,

    /// <summary>Measured on an aged joint or in service.</summary>
    Measured,

    /// <summary>Assumed for the end of life.</summary>
    EndOfLife,
}
