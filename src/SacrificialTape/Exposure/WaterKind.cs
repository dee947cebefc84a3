namespace SacrificialTape.Exposure;

/// <summary>Kinds of water for which a zinc rate is printed somewhere.</summary>
public enum WaterKind
{
    /// <summary>Sea water, 15 to 25 um/a.</summary>
    Sea = 0,

    /// <summary>Sea water in temperate seas, 10 to 20 um/a (recalled; tropical seas are worse).</summary>
    TemperateSea,

    /// <summary>Hard fresh water, 2.5 to 5 um/a.</summary>
    HardFresh,

    /// <summary>Soft fresh water, 5 to 10 um/a.</summary>
    SoftFresh,

    /// <summary>Distilled water, 50 to 200 um/a; condensate is nearest to it (judgement).</summary>
    Distilled,
}
