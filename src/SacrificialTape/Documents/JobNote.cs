namespace SacrificialTape.Documents;

/// <summary>What a person remarked on a job, or on one of its lines. No calculation looks at it.</summary>
public sealed record JobNote
{
    /// <summary>Writes a note down.</summary>
    /// <param name="text">What was remarked.</param>
    /// <param name="tag">The tag of the line; left out: the whole job.</param>
    /// <exception cref="ArgumentException">The text or the tag is empty.</exception>
    public JobNote(string text, string? tag = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        if (tag is not null)
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(tag);
        }

        this.Text = text;
        this.Tag = tag;
    }

    /// <summary>What was remarked.</summary>
    public string Text { get; }

    /// <summary>The tag of the line; null for the whole job.</summary>
    public string? Tag { get; }

    /// <summary>Tag and text.</summary>
    public override string ToString() => this.Tag is null ? this.Text : $"{this.Tag}: {this.Text}";
}
