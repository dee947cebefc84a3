using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Strips of one length along the meridians.</summary>
public sealed record MeridianStage
{
    private readonly StoredNumber lengthMm;

    internal MeridianStage(int count, double lengthMm)
    {
        this.Count = count;
        this.lengthMm = new StoredNumber(lengthMm);
    }

    /// <summary>How many of them lie in one pass.</summary>
    public int Count { get; }

    /// <summary>Length of one, from the low edge.</summary>
    public Length Length => Length.FromMillimeters(this.lengthMm.Bare);

    /// <summary>Both in a few words.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{this.Count} x {this.lengthMm.Bare:0.0} mm");
}
