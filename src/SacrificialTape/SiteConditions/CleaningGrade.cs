namespace SacrificialTape.SiteConditions;

/// <summary>How clean the steel is, by the photographs of ISO 8501-1 and ISO 8501-4.</summary>
public enum CleaningGrade
{
    /// <summary>St 2: thoroughly cleaned by hand or power tool.</summary>
    St2 = 0,

    /// <summary>St 3: very thoroughly cleaned by hand or power tool.</summary>
    St3,

    /// <summary>Sa 1: lightly blasted.</summary>
    Sa1,

    /// <summary>Sa 2: thoroughly blasted.</summary>
    Sa2,

    /// <summary>Sa 2 1/2: very thoroughly blasted.</summary>
    Sa2Half,

    /// <summary>Sa 3: blasted to visually clean steel.</summary>
    Sa3,

    /// <summary>Wa 1: lightly cleaned by water jet.</summary>
    Wa1,

    /// <summary>Wa 2: thoroughly cleaned by water jet.</summary>
    Wa2,

    /// <summary>Wa 2 1/2: very thoroughly cleaned by water jet.</summary>
    Wa2Half,
}
