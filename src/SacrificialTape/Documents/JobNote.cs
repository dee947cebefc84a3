namespace SacrificialTape.Documents;

/// <summary>What a person remarked on a job, or on one of its lines. No calculation looks at it.</summary>
public sealed record JobNote
{
    /// <summary>Writes a note down.</summary>
    /// <param name="text">What was remarked.</param>
    /// <param name="line">The tag of the line; left out: the whole job.</param>
    /// <exception cref="ArgumentException">The text or the tag is empty.</exception>
    public JobNote(string text, string? line = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        if (line is not null)
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(line);
        }

        this.Text = text;
        this.Line = line;
    }

    /// <summary>What was remarked.</summary>
    public string Text { get; }

    /// <summary>The tag of the line; null for the whole job.</summary>
    public string? Line { get; }

    /// <summary>Tag and text.</summary>
    public override string ToString() => this.Line is null ? this.Text : $"{this.Line}: {this.Text}";
}
