using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>The charge that a kilogram of anode zinc delivers to steel in service: its own corrosion is already taken off.</summary>
/// <remarks>
/// <para>More than 0, at most the theoretical capacity. It never goes together with own corrosion counted separately; no
/// signature of this library takes both.</para>
/// <para>Published figures are for cast anode alloys. Plain rolled foil is neither of them: <see cref="IsOfCastAlloy"/> says
/// so, and a rule reports it.</para>
/// </remarks>
public sealed record PracticalCapacity
{
    private readonly StoredNumber ampereHoursPerKilogram;

    private PracticalCapacity(string name, CapacityMedium medium, double ampereHoursPerKilogram, ElectrodePotential? working, bool cast, Basis basis)
    {
        this.Name = name;
        this.Medium = medium;
        this.ampereHoursPerKilogram = new StoredNumber(ampereHoursPerKilogram);
        this.WorkingPotential = working;
        this.IsOfCastAlloy = cast;
        this.Basis = basis;
    }

    /// <summary>DNV-RP-B401, seawater: 780 A.h/kg at -1.00 V SSC (recalled, check before use).</summary>
    public static PracticalCapacity DnvSeawater { get; } =
        Cast("DNV-RP-B401, seawater", CapacityMedium.Seawater, 780, -1.00, Basis.From(References.DnvCathodicProtection));

    /// <summary>DNV-RP-B401, sediment: 700 A.h/kg at -0.95 V SSC (recalled, check before use; ISO 15589-2 says 750).</summary>
    public static PracticalCapacity DnvSediment { get; } =
        Cast("DNV-RP-B401, sediment", CapacityMedium.Sediment, 700, -0.95, Basis.From(References.DnvCathodicProtection));

    /// <summary>ISO 15589-2, seawater up to 30 degC: 780 A.h/kg at -1.03 V SSC (recalled, check before use).</summary>
    public static PracticalCapacity IsoSeawater { get; } =
        Cast("ISO 15589-2, seawater", CapacityMedium.Seawater, 780, -1.03, Basis.From(References.PipelineAnodes));

    /// <summary>ISO 15589-2, buried up to 30 degC: 750 A.h/kg at -0.98 V SSC (recalled, check before use; DNV says 700).</summary>
    public static PracticalCapacity IsoBuried { get; } =
        Cast("ISO 15589-2, buried", CapacityMedium.Sediment, 750, -0.98, Basis.From(References.PipelineAnodes));

    /// <summary>BS 7361: at least 780 A.h/kg (read as quoted elsewhere).</summary>
    public static PracticalCapacity BritishStandard { get; } =
        Cast("BS 7361", CapacityMedium.Any, 780, null, Basis.From(References.BritishCathodicProtection));

    /// <summary>Pipeline handbook, seawater alloy: 354 A.h/lb at -1.03 V SSC (read).</summary>
    public static PracticalCapacity HandbookSeawater { get; } = Cast(
        "pipeline handbook, seawater alloy", CapacityMedium.Seawater, 354 / UnitConversions.KilogramsPerPound, -1.03, Basis.From(References.PipelineHandbook));

    /// <summary>A teaching table at 90 % efficiency: 335 A.h/lb (read).</summary>
    public static PracticalCapacity NinetyPercent { get; } = Cast(
        "zinc at 90 %", CapacityMedium.Any, 335 / UnitConversions.KilogramsPerPound, null, Basis.From(References.AnodeCourseTable));

    /// <summary>The published figures that are carried here.</summary>
    public static ValueList<PracticalCapacity> Published { get; } =
        [DnvSeawater, DnvSediment, IsoSeawater, IsoBuried, BritishStandard, HandbookSeawater, NinetyPercent];

    /// <summary>A short name for tables.</summary>
    public string Name { get; }

    /// <summary>What the anode lies in.</summary>
    public CapacityMedium Medium { get; }

    /// <summary>The capacity.</summary>
    public ElectrochemicalCapacity Capacity => ElectrochemicalCapacity.FromAmpereHoursPerKilogram(this.AmpereHoursPerKilogram);

    /// <summary>The potential of the working anode, where the source states it.</summary>
    public ElectrodePotential? WorkingPotential { get; }

    /// <summary>Whether it was stated for a cast anode alloy and not for rolled foil.</summary>
    public bool IsOfCastAlloy { get; }

    /// <summary>How it is known.</summary>
    public Basis Basis { get; }

    internal double AmpereHoursPerKilogram => this.ampereHoursPerKilogram.Bare;

    /// <summary>A capacity that was measured on the foil itself.</summary>
    /// <param name="capacity">More than 0, at most the theoretical capacity.</param>
    /// <param name="note">What was tested, where and when.</param>
    /// <exception cref="ArgumentOutOfRangeException">More than Faraday's law allows.</exception>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public static PracticalCapacity FromTest(ElectrochemicalCapacity capacity, string note) => new(
        "tested",
        CapacityMedium.Any,
        AcceptedRange.AboveUpTo(0, TheoreticalCapacity.Zinc.AmpereHoursPerKilogram, "A.h/kg").Noting("the theoretical capacity of zinc")
            .Check(capacity.AmpereHoursPerKilogram, nameof(capacity)),
        null,
        false,
        Basis.OwnExperience(note));

    /// <summary>Name and capacity in a few words.</summary>
    public override string ToString() => $"{this.Name}, {this.Capacity}";

    private static PracticalCapacity Cast(string name, CapacityMedium medium, double capacity, double? volts, Basis basis) => new(
        name,
        medium,
        capacity,
        volts is { } stated ? ElectrodePotential.FromVolts(stated, ReferenceElectrode.SilverChlorideSeawater) : null,
        true,
        basis);
}
