namespace PlantSurvey;

/// <summary>A cell that does not hold what its shape needs; it never leaves the reader of its row.</summary>
internal sealed class CellException(string column, string message) : Exception(message)
{
    internal string Column { get; } = column;
}
