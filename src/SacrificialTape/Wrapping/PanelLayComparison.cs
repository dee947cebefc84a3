using System.Globalization;
using SacrificialTape.Provenance;

namespace SacrificialTape.Wrapping;

/// <summary>A panel laid both ways: which is better, and why.</summary>
/// <remarks>
/// The better way takes fewer metres of strip; of the same metres, fewer pieces; of as many pieces, fewer splices. Where
/// all three are the same, strips along the width are named: on upright steel they shed water.
/// </remarks>
public sealed record PanelLayComparison : IHasWorkings
{
    internal PanelLayComparison(PanelLay alongWidth, PanelLay alongHeight)
    {
        this.AlongWidth = alongWidth;
        this.AlongHeight = alongHeight;
        (bool height, string why) = Judge(alongWidth, alongHeight);
        this.Better = height ? alongHeight : alongWidth;
        this.Why = height
            ? why + " On upright steel its lap joints stand up and shed water sideways: where rain beats on, take the level strips instead."
            : why + " On upright steel these strips lie level, and laid from the bottom up they shed water.";
    }

    /// <summary>Strips along the width.</summary>
    public PanelLay AlongWidth { get; }

    /// <summary>Strips along the height.</summary>
    public PanelLay AlongHeight { get; }

    /// <summary>The better of the two.</summary>
    public PanelLay Better { get; }

    /// <summary>What decided, with numbers, and what it means on upright steel.</summary>
    public string Why { get; }

    /// <summary>The workings of both ways, one after the other.</summary>
    public Workings ShowWorkings() => new(
        "Strips along the width, then along the height, of " + this.AlongWidth.Panel.Description,
        [.. this.AlongWidth.ShowWorkings().Steps, .. this.AlongHeight.ShowWorkings().Steps]);

    /// <summary>What decided.</summary>
    public override string ToString() => this.Why;

    private static (bool Height, string Why) Judge(PanelLay width, PanelLay height)
    {
        long widthUm = width.Strips.Sum(static strip => strip.LengthUm * strip.Count);
        long heightUm = height.Strips.Sum(static strip => strip.LengthUm * strip.Count);
        if (widthUm != heightUm)
        {
            return (heightUm < widthUm, Said(heightUm < widthUm, Meters(widthUm), Meters(heightUm), "of strip"));
        }

        return width.Pieces != height.Pieces
            ? (height.Pieces < width.Pieces, Said(height.Pieces < width.Pieces, Number(width.Pieces), Number(height.Pieces), "pieces of the same metres"))
            : width.Splices != height.Splices
            ? (height.Splices < width.Splices, Said(height.Splices < width.Splices, Number(width.Splices), Number(height.Splices), "splices of the same metres and pieces"))
            : (false, "Both ways take the same metres, pieces and splices.");
    }

    private static string Said(bool height, string width, string other, string what) => height
        ? $"Along the height: {other} against {width} {what}."
        : $"Along the width: {width} against {other} {what}.";

    private static string Meters(long um) => string.Create(CultureInfo.InvariantCulture, $"{um / 1e6:0.###} m");

    private static string Number(double count) => string.Create(CultureInfo.InvariantCulture, $"{count:0}");
}
