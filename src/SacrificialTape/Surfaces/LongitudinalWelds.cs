using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Welds along a pipe.</summary>
/// <remarks>Length: more than 0, at most 1000 km. Count: at least 1.</remarks>
public sealed record LongitudinalWelds : WeldSeam
{
    private readonly StoredNumber lengthMm;

    /// <summary>Describes longitudinal welds.</summary>
    /// <param name="seamLength">Of one of them.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LongitudinalWelds(Length seamLength, int count)
        : base(count) =>
        this.lengthMm = new StoredNumber(AcceptedRange.AboveUpTo(0, 1e6, "m")
            .Check(UnitConversions.Millimeters(seamLength) / 1000, nameof(seamLength)) * 1000);

    /// <inheritdoc/>
    public override Length SeamLength => Length.FromMillimeters(this.lengthMm.Bare);

    /// <inheritdoc/>
    public override bool Closed => false;

    /// <inheritdoc/>
    public override string Place => "along the pipe";

    internal override double LengthMm<TSteps>(TSteps steps) => this.lengthMm.Bare;
}
