namespace SacrificialTape.Exposure;

/// <summary>Rooms that a standard names as examples of its categories.</summary>
public enum IndoorPlace
{
    /// <summary>Heated, with clean air: offices, shops, schools. C1.</summary>
    HeatedAndClean = 0,

    /// <summary>Not heated, condensation may occur: depots, sports halls. C2.</summary>
    UnheatedWithCondensation,

    /// <summary>Production with high humidity and some pollution: food processing. C3.</summary>
    HumidProduction,

    /// <summary>Chemical plant, swimming pools. C4.</summary>
    PoolOrChemicalPlant,

    /// <summary>Almost permanent condensation and much pollution. C5.</summary>
    AlwaysCondensingAndPolluted,
}
