using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>A measure of a document in the unit its author gave, where that is not the one the library would write.</summary>
/// <remarks>
/// The path names items of lists by their names, so that it holds when lines are added or taken away:
/// <c>$.lines['BR-101'].lay.surface.length</c>.
/// </remarks>
public sealed record GivenMeasure
{
    /// <summary>States a measure as given.</summary>
    /// <param name="path">Its place.</param>
    /// <param name="measure">Number and unit.</param>
    /// <exception cref="ArgumentException">The path does not begin with <c>$</c>.</exception>
    public GivenMeasure(string path, Measure measure)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        if (!path.StartsWith('$'))
        {
            throw new ArgumentException($"'{path}' is no path: it begins with '$'.", nameof(path));
        }

        _ = measure.Number;
        this.Path = path;
        this.Measure = measure;
    }

    /// <summary>Its place.</summary>
    public string Path { get; }

    /// <summary>Number and unit.</summary>
    public Measure Measure { get; }

    /// <summary>Path and measure in one line.</summary>
    public override string ToString() => $"{this.Path}: {MeasureText.Exact(this.Measure)}";
}
