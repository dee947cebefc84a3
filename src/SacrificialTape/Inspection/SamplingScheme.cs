namespace SacrificialTape.Inspection;

/// <summary>A document that says how many thickness readings an area takes. All are written for paint.</summary>
public enum SamplingScheme
{
    /// <summary>ISO 19840: by a table up to 100 m2, then 10 for each 100 m2.</summary>
    Iso19840 = 0,

    /// <summary>SSPC-PA 2: five spots on each of a number of areas of 10 m2.</summary>
    SspcPa2,

    /// <summary>AS 3894.3: as SSPC-PA 2 from 10 m2 upward.</summary>
    As38943,

    /// <summary>IMO PSPC: one for each 5 m2 of flat surface.</summary>
    ImoPspc,
}
