namespace SacrificialTape.Contact;

/// <summary>What lies between tape and steel. Tight mill scale and tight rust are judged as paint is: the adhesive does not touch steel through them.</summary>
public enum UnderTape
{
    /// <summary>Sound old paint, cleaned and roughened.</summary>
    SoundPaint = 0,

    /// <summary>Tight mill scale.</summary>
    TightMillScale,

    /// <summary>Tight rust.</summary>
    TightRust,
}
