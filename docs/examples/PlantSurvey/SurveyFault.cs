namespace PlantSurvey;

/// <summary>Something wrong in a survey file, with its place.</summary>
public sealed record SurveyFault(string File, int Line, string Column, string Message)
{
    public override string ToString() => (this.Line, this.Column) switch
    {
        (0, _) => $"{this.File}: {this.Message}",
        (_, "") => $"{this.File}, line {this.Line}: {this.Message}",
        _ => $"{this.File}, line {this.Line}, {this.Column}: {this.Message}",
    };
}
