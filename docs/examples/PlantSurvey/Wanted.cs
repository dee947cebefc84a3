namespace PlantSurvey;

/// <summary>What the program shows.</summary>
internal enum Wanted
{
    Tables,
    Data,
    CutList,
    Crew,
    Workings,
    Choice,
}
