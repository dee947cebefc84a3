using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>A point of the curve of zinc left over time.</summary>
public sealed record ZincLeftPoint
{
    private readonly StoredNumber years;

    internal ZincLeftPoint(double years, ZincShare left)
    {
        this.years = new StoredNumber(years);
        this.Left = left;
    }

    /// <summary>Time since the tape was laid.</summary>
    public Duration Time => UnitConversions.FromYears(this.years.Bare);

    /// <summary>The share of the usable zinc of all layers that is then left at least.</summary>
    public ZincShare Left { get; }

    /// <summary>Time and share in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Left} after {this.years.Bare:0.###} a");
}
