namespace SacrificialTape.Inspection;

/// <summary>How thickness readings are accepted. All are written for paint.</summary>
public enum AcceptanceRule
{
    /// <summary>
    /// 80-20 of ISO 19840: mean at least the nominal, every reading at least 80 % of it, at most 20 % of them below it.
    /// </summary>
    EightyTwenty = 0,

    /// <summary>90/10 of IMO PSPC: at least 90 % of the readings at least the nominal, none below 90 % of it.</summary>
    NinetyTen,
}
