namespace SacrificialTape.Surfaces;

/// <summary>Where the outside corner radius of a rectangular hollow section comes from.</summary>
public enum HollowCorners
{
    /// <summary>Given, as measured.</summary>
    Measured = 0,

    /// <summary>1.5 T by EN 10210-2: recalled, check before use.</summary>
    HotFinished,

    /// <summary>2.0 T up to 6 mm, 2.5 T up to 10 mm, 3.0 T above, by EN 10219-2: recalled, check before use.</summary>
    ColdFormed,
}
