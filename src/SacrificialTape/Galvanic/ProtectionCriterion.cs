using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>When steel counts as protected: at or below a potential, or shifted far enough below its rest potential.</summary>
/// <remarks>
/// Potentials are free of ohmic drop. The published ones are for steel that lies in water, soil or concrete; none is for
/// a thin film, and <see cref="IsForImmersion"/> says so. Shift: more than 0, at most 1 V.
/// </remarks>
public sealed record ProtectionCriterion
{
    private readonly StoredNumber shiftV;

    private ProtectionCriterion(string name, ElectrodePotential? atOrBelow, double shiftV, ElectrodePotential? notBelow, bool immersion, Basis basis)
    {
        this.Name = name;
        this.AtOrBelow = atOrBelow;
        this.shiftV = new StoredNumber(shiftV);
        this.NotBelow = notBelow;
        this.IsForImmersion = immersion;
        this.Basis = basis;
    }

    /// <summary>Steel in soil or water: -0.85 V CSE (read).</summary>
    public static ProtectionCriterion SoilOrWater { get; } =
        Immersed("soil or water", -0.85, ReferenceElectrode.CopperSulfate, null, Basis.From(References.ProtectionCriteria));

    /// <summary>Steel in soil or water: 100 mV below its rest potential (read).</summary>
    public static ProtectionCriterion HundredMillivoltShift { get; } =
        new("100 mV shift", null, 0.1, null, true, Basis.From(References.ProtectionCriteria));

    /// <summary>Steel with anaerobic bacteria: -0.95 V CSE (recalled, check before use).</summary>
    public static ProtectionCriterion Anaerobic { get; } =
        Immersed("anaerobic", -0.95, ReferenceElectrode.CopperSulfate, -1.20, Basis.From(References.BuriedPipelineCriteria));

    /// <summary>Aerated seawater: -0.80 V SSC (recalled, check before use).</summary>
    public static ProtectionCriterion SeawaterAerated { get; } =
        Immersed("aerated seawater", -0.80, ReferenceElectrode.SilverChlorideSeawater, -1.10, Basis.From(References.SeawaterCriteria));

    /// <summary>Anaerobic seawater: -0.90 V SSC (recalled, check before use).</summary>
    public static ProtectionCriterion SeawaterAnaerobic { get; } =
        Immersed("anaerobic seawater", -0.90, ReferenceElectrode.SilverChlorideSeawater, -1.10, Basis.From(References.SeawaterCriteria));

    /// <summary>High-strength steel above 550 MPa yield: -0.83 V SSC, and not below -0.95 V SSC (recalled, check before use).</summary>
    public static ProtectionCriterion HighStrengthSteel { get; } =
        Immersed("high-strength steel", -0.83, ReferenceElectrode.SilverChlorideSeawater, -0.95, Basis.From(References.SeawaterCriteria));

    /// <summary>Steel sheet beside zinc in aerated salt water, less than 1 mil a year: -0.725 V SCE (read, abstract).</summary>
    public static ProtectionCriterion SheetBesideZinc { get; } =
        Immersed("sheet beside zinc in salt water", -0.725, ReferenceElectrode.Calomel, null, Basis.From(References.GalvanicCoatingCriterion));

    /// <summary>A short name for tables.</summary>
    public string Name { get; }

    /// <summary>The potential at or below which steel counts as protected; null for a shift.</summary>
    public ElectrodePotential? AtOrBelow { get; }

    /// <summary>How far below its rest potential steel counts as protected; null for a potential.</summary>
    public ElectricPotential? Shift => this.AtOrBelow is null ? ElectricPotential.FromVolts(this.shiftV.Bare) : null;

    /// <summary>The potential below which steel is not to go, where the source states one.</summary>
    public ElectrodePotential? NotBelow { get; }

    /// <summary>Whether it was made for steel in water, soil or concrete: under a thin film it is a stranger.</summary>
    public bool IsForImmersion { get; }

    /// <summary>How it is known.</summary>
    public Basis Basis { get; }

    /// <summary>A potential of the user's own, made for the case in hand.</summary>
    /// <param name="potential">Steel counts as protected at or below it.</param>
    /// <param name="note">What was seen, where and when.</param>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public static ProtectionCriterion FromPotential(ElectrodePotential potential, string note) =>
        new("own potential", potential, 0, null, false, Basis.OwnExperience(note));

    /// <summary>A shift of the user's own, made for the case in hand.</summary>
    /// <param name="shift">Steel counts as protected that far below its rest potential; more than 0, at most 1 V.</param>
    /// <param name="note">What was seen, where and when.</param>
    /// <exception cref="ArgumentOutOfRangeException">The shift is outside its range.</exception>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public static ProtectionCriterion FromShift(ElectricPotential shift, string note) => new(
        "own shift",
        null,
        AcceptedRange.AboveUpTo(0, 1, "V").Check(UnitConversions.Volts(shift), nameof(shift)),
        null,
        false,
        Basis.OwnExperience(note));

    /// <summary>The potential this criterion asks of a steel with a rest potential, V SCE.</summary>
    internal double ThresholdCalomel(double restCalomel) => this.AtOrBelow is { } potential
        ? potential.VoltsCalomel
        : restCalomel - this.shiftV.Bare;

    private static ProtectionCriterion Immersed(string name, double volts, ReferenceElectrode reference, double? notBelow, Basis basis) => new(
        name,
        ElectrodePotential.FromVolts(volts, reference),
        0,
        notBelow is { } limit ? ElectrodePotential.FromVolts(limit, reference) : null,
        true,
        basis);

    /// <summary>Name and limit in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Name}: {(this.AtOrBelow is { } potential ? $"at or below {potential}" : $"shift of {this.shiftV.Bare:0.####} V")}");
}
