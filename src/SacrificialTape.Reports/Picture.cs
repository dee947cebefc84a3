namespace SacrificialTape.Reports;

/// <summary>A drawing as SVG, with words for those who do not see it.</summary>
/// <remarks>Colours differ in grey too, and nothing is told by colour alone. The same input gives the same text, byte for byte.</remarks>
/// <example><code source="JobPackPage.cs" region="draw" /></example>
public sealed partial record Picture
{
    internal Picture(string title, string description, string svg)
    {
        this.Title = title;
        this.Description = description;
        this.Svg = svg;
    }

    /// <summary>What is drawn.</summary>
    public string Title { get; }

    /// <summary>What there is to see, in words.</summary>
    public string Description { get; }

    /// <summary>The drawing: an <c>svg</c> element that stands alone or inside a page.</summary>
    public string Svg { get; }

    /// <summary>The title.</summary>
    public override string ToString() => this.Title;
}
