namespace SacrificialTape.Galvanic;

/// <summary>What a couple of linear zinc and steel under a film comes to: mm, mA/m, V, A/m2.</summary>
internal readonly record struct LinearCoupleTerms(
    double SteelDecayMm,
    double ZincDecayMm,
    double CurrentMilliamperesPerM,
    double SteelEdgeV,
    double ZincEdgeV,
    double FarEndV,
    double PeakOverMean,
    double PeakAmperesPerM2);
