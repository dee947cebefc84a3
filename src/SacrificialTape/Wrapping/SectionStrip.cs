using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Where one strip of a <see cref="SectionLay"/> lies on the outline, and where it is folded.</summary>
public sealed record SectionStrip
{
    private readonly StoredNumber startMm;
    private readonly StoredNumber widthMm;
    private readonly StoredNumber trimMm;
    private readonly StoredNumber lapMm;

    internal SectionStrip(double startMm, double widthMm, double trimMm, double lapMm, ValueList<Fold> folds)
    {
        this.startMm = new StoredNumber(startMm);
        this.widthMm = new StoredNumber(widthMm);
        this.trimMm = new StoredNumber(trimMm);
        this.lapMm = new StoredNumber(lapMm);
        this.Folds = folds;
    }

    /// <summary>Its first edge, along the outline from the beginning of the first face.</summary>
    public Length Start => Length.FromMillimeters(this.startMm.Bare);

    /// <summary>Its width as laid.</summary>
    public Length Width => Length.FromMillimeters(this.widthMm.Bare);

    /// <summary>What is cut off its width, so that its edge clears a fold; zero as a rule.</summary>
    public Length TrimmedWidth => Length.FromMillimeters(this.trimMm.Bare);

    /// <summary>Its lap on the next strip, or of the last strip on the first.</summary>
    public Length LapOnNext => Length.FromMillimeters(this.lapMm.Bare);

    /// <summary>Its folds, their places counted across the strip from its first edge: where the crew marks and pre-folds it.</summary>
    public ValueList<Fold> Folds { get; }

    internal double TrimMm => this.trimMm.Bare;

    /// <summary>Place, width and folds in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"from {this.startMm.Bare:0.0} mm, {this.widthMm.Bare:0.0} mm wide, folds: {(this.Folds.Count == 0 ? "none" : string.Join("; ", this.Folds))}");
}
