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
    Pack,
    Crew,
    Workings,
    Choice,
}
