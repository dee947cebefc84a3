using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>A potential of a metal in water or soil, against a named reference electrode.</summary>
/// <remarks>
/// <para>Range: -3 to 3 V. It keeps number and reference as given and compares by meaning: -0.85 V against copper sulfate
/// is -0.78 V against silver chloride in seawater and -0.776 V against calomel, the equivalents printed for the same
/// criterion. <c>default</c> is unset and says so when read.</para>
/// </remarks>
public readonly struct ElectrodePotential : IEquatable<ElectrodePotential>
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(-3, 3, "V").Noting("against a reference electrode");

    private readonly StoredNumber volts;
    private readonly ReferenceElectrode reference;

    private ElectrodePotential(double volts, ReferenceElectrode reference)
    {
        this.volts = new StoredNumber(volts);
        this.reference = reference;
    }

    /// <summary>The number in volts, as given.</summary>
    public double Volts => this.volts.Read(nameof(ElectrodePotential));

    /// <summary>The reference electrode, as given.</summary>
    public ReferenceElectrode Reference => this.volts.IsSet ? this.reference : throw new InvalidOperationException(
        "This ElectrodePotential is unset: it is a default value that no factory has filled.");

    internal double VoltsCalomel => this.In(ReferenceElectrode.Calomel);

    /// <summary>Whether two potentials mean the same, whatever each was measured against.</summary>
    public static bool operator ==(ElectrodePotential left, ElectrodePotential right) => left.Equals(right);

    /// <summary>Whether two potentials differ in meaning.</summary>
    public static bool operator !=(ElectrodePotential left, ElectrodePotential right) => !left.Equals(right);

    /// <summary>States a potential.</summary>
    /// <param name="volts">-3 to 3 V; steel under zinc is negative.</param>
    /// <param name="reference">What it was measured against.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside that range, or the reference is not defined.</exception>
    public static ElectrodePotential FromVolts(double volts, ReferenceElectrode reference)
    {
        _ = GalvanicTables.OffsetFromCopperSulfate(reference);
        return new(Accepted.Check(volts), reference);
    }

    /// <summary>The same potential against another reference electrode.</summary>
    /// <param name="other">The other reference electrode.</param>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.OtherReference))]
    public ElectrodePotential Against(ReferenceElectrode other) => new(this.In(other), other);

    /// <summary>How far this potential lies above another; negative when it lies below.</summary>
    /// <param name="other">The other potential.</param>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.OtherReference))]
    public ElectricPotential Above(ElectrodePotential other) => ElectricPotential.FromVolts(this.In(other.Reference) - other.Volts);

    /// <inheritdoc/>
    public bool Equals(ElectrodePotential other) =>
        this.volts.IsSet == other.volts.IsSet
        && (!this.volts.IsSet || StoredNumber.Key(Math.Round(this.VoltsCalomel, 12)) == StoredNumber.Key(Math.Round(other.VoltsCalomel, 12)));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ElectrodePotential other && this.Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => this.volts.IsSet ? StoredNumber.Key(Math.Round(this.VoltsCalomel, 12)).GetHashCode() : 0;

    /// <summary>The potential as invariant text with its reference.</summary>
    public override string ToString() => this.volts.IsSet
        ? $"{MeasureText.Write(this.Volts, TradeUnit.Volt, 6)} {GalvanicTables.ShortName(this.reference)}"
        : "unset";

    internal static ElectrodePotential FromVoltsCalomel(double volts, ReferenceElectrode shownAgainst) =>
        new(volts + GalvanicKernel.Shift(ReferenceElectrode.Calomel, shownAgainst), shownAgainst);

    private double In(ReferenceElectrode other) => other == this.Reference
        ? this.Volts
        : GalvanicKernel.OtherReference(this.Volts, this.reference, other);
}
