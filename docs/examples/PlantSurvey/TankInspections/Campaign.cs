using SacrificialTape.Inspection;
using UnitsNet;

namespace PlantSurvey.TankInspections;

/// <summary>The readings of one day.</summary>
/// <param name="Day">When they were taken.</param>
/// <param name="Age">Of the tape by then.</param>
/// <param name="Readings">The readings, outliers flagged.</param>
/// <param name="Used">What is reckoned with: all of them, or those that are not flagged, as the survey says.</param>
internal sealed record Campaign(DateOnly Day, Duration Age, FoilReadings Readings, ReadingStatistics Used);
