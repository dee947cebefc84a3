using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;

namespace SacrificialTape.ServiceLife;

/// <summary>Zinc goes by its own corrosion in the open air and by the demand of bare steel, counted apart.</summary>
/// <remarks>It takes the theoretical capacity only: a practical one already contains own corrosion and does not fit.</remarks>
public sealed record OwnCorrosionAndDemand : ZincConsumption
{
    /// <summary>Describes the count.</summary>
    /// <param name="capacity">The theoretical capacity of zinc.</param>
    /// <param name="exposure">Where the zinc stands.</param>
    /// <param name="law">How its own loss grows with time.</param>
    public OwnCorrosionAndDemand(TheoreticalCapacity capacity, ZincExposure exposure, ILossLaw law)
    {
        ArgumentNullException.ThrowIfNull(capacity);
        ArgumentNullException.ThrowIfNull(exposure);
        ArgumentNullException.ThrowIfNull(law);
        this.Capacity = capacity;
        this.Exposure = exposure;
        this.Law = law;
    }

    /// <summary>The theoretical capacity of zinc.</summary>
    public TheoreticalCapacity Capacity { get; }

    /// <summary>Where the zinc stands.</summary>
    public ZincExposure Exposure { get; }

    /// <summary>How its own loss grows with time.</summary>
    public ILossLaw Law { get; }

    /// <inheritdoc/>
    public override Basis Basis => this.Law.Basis;

    internal override double AmpereHoursPerKilogram => this.Capacity.AmpereHoursPerKilogram;
}
