namespace SacrificialTape.Exposure;

/// <summary>Which edition of ISO 9223 a class is meant by: the bounds for sulfur dioxide changed.</summary>
public enum Iso9223Edition
{
    /// <summary>ISO 9223:1992.</summary>
    Of1992 = 1992,

    /// <summary>ISO 9223:2012.</summary>
    Of2012 = 2012,
}
