using SacrificialTape.Costing;
using SacrificialTape.Inspection;
using UnitsNet;

namespace PlantSurvey.TankInspections;

/// <summary>How damage is repaired, and what repair and new tape cost.</summary>
internal sealed record RepairTerms(Length Margin, Length Step, Length Lap, RepairPrices Prices, Money Rewrapping, DiscountRate Discount);
