using UnitsNet;

namespace PlantSurvey;

/// <summary>What the survey says of a line beyond what a job needs: the place by its name in exposures.csv, the steel's thickness.</summary>
internal sealed record LineNotes(SurveyExposure? Exposure, Length? SteelThickness);
