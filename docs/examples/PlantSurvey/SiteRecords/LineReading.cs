using SacrificialTape.SiteConditions;

namespace PlantSurvey.SiteRecords;

/// <summary>What was measured and seen on one line.</summary>
internal sealed record LineReading(string Line, SurfaceReading Reading);
