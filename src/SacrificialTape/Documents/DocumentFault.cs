namespace SacrificialTape.Documents;

/// <summary>One fault of a document: where it is and what was expected there.</summary>
public sealed record DocumentFault
{
    internal DocumentFault(string path, int line, int column, string message)
    {
        this.Path = path;
        this.Line = line;
        this.Column = column;
        this.Message = message;
    }

    /// <summary>The place in the document's structure, for instance <c>$.rules[3].limit</c>.</summary>
    public string Path { get; }

    /// <summary>Line in the text, counted from 1.</summary>
    public int Line { get; }

    /// <summary>Column in that line, in characters, counted from 1.</summary>
    public int Column { get; }

    /// <summary>What is wrong and what was expected.</summary>
    public string Message { get; }

    /// <summary>Line, column, path and message in one line.</summary>
    public override string ToString() => $"line {this.Line}, column {this.Column}, {this.Path}: {this.Message}";
}
