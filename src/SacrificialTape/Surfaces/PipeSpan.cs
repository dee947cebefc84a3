using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A length of pipe between two bands that stay clear, or between a band and an end.</summary>
public sealed record PipeSpan
{
    private readonly StoredNumber fromMm;
    private readonly StoredNumber toMm;

    internal PipeSpan(double fromMm, double toMm, StraightPipe pipe)
    {
        this.fromMm = new StoredNumber(fromMm);
        this.toMm = new StoredNumber(toMm);
        this.Pipe = pipe;
    }

    /// <summary>Where it begins, from the start of the whole pipe.</summary>
    public Length From => Length.FromMillimeters(this.FromMm);

    /// <summary>Where it ends, from the start of the whole pipe.</summary>
    public Length To => Length.FromMillimeters(this.ToMm);

    /// <summary>The span as a pipe of its own.</summary>
    public StraightPipe Pipe { get; }

    internal double FromMm => this.fromMm.Bare;

    internal double ToMm => this.toMm.Bare;

    /// <summary>Beginning and end in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.FromMm / 1000:0.000} to {this.ToMm / 1000:0.000} m");
}
