namespace PlantSurvey;

/// <summary>What the program shows.</summary>
internal enum Wanted
{
    Tables,
    Data,
    CutList,
    Life,
    Site,
    Plan,
    Inspection,
    Crew,
    Workings,
    Choice,
}
