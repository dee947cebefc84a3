namespace SacrificialTape.Galvanic;

/// <summary>What a couple of linear zinc and steel under a film is worked out from.</summary>
internal readonly record struct LinearCoupleInput(
    double SiemensPerM,
    double FilmUm,
    double ZincV,
    double ZincOhmM2,
    double ZincMm,
    double SteelV,
    double SteelOhmM2,
    double SteelMm,
    double InertGapMm,
    double ContactOhmM);
