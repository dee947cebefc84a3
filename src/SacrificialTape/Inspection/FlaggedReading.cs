using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>A reading that lies farther from the others than chance explains at the stated significance. It is flagged, not dropped.</summary>
public sealed record FlaggedReading
{
    private readonly StoredNumber distance;
    private readonly StoredNumber critical;

    internal FlaggedReading(int place, FoilReading reading, double distance, double critical)
    {
        this.Number = place;
        this.Reading = reading;
        this.distance = new StoredNumber(distance);
        this.critical = new StoredNumber(critical);
    }

    /// <summary>Its number in the list of readings, counted from 1.</summary>
    public int Number { get; }

    /// <summary>The reading.</summary>
    public FoilReading Reading { get; }

    /// <summary>Its thickness.</summary>
    public Length Thickness => this.Reading.Thickness;

    /// <summary>Its distance from the mean of those not yet flagged, in their standard deviations.</summary>
    public double Distance => this.distance.Bare;

    /// <summary>The distance from which a reading is flagged.</summary>
    public double Critical => this.critical.Bare;

    /// <summary>The reading and why, in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"reading {this.Number}, {this.Reading.Um:0.##} um: {this.Distance:0.000} standard deviations from the mean, critical {this.Critical:0.000}");
}
