namespace SacrificialTape.SiteConditions;

/// <summary>How steel was cleaned; grades of different methods are not compared.</summary>
public enum CleaningMethod
{
    /// <summary>By hand or power tool, St.</summary>
    Tool = 0,

    /// <summary>By blasting, Sa.</summary>
    Blast,

    /// <summary>By water jet, Wa.</summary>
    WaterJet,
}
