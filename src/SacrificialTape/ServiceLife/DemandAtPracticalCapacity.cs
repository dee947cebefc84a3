using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;

namespace SacrificialTape.ServiceLife;

/// <summary>Zinc goes by the demand of bare steel at a practical capacity, which contains its own corrosion.</summary>
public sealed record DemandAtPracticalCapacity : ZincConsumption
{
    /// <summary>Describes the count.</summary>
    /// <param name="capacity">The practical capacity.</param>
    public DemandAtPracticalCapacity(PracticalCapacity capacity)
    {
        ArgumentNullException.ThrowIfNull(capacity);
        this.Capacity = capacity;
    }

    /// <summary>The practical capacity.</summary>
    public PracticalCapacity Capacity { get; }

    /// <inheritdoc/>
    public override Basis Basis => this.Capacity.Basis;

    internal override double AmpereHoursPerKilogram => this.Capacity.AmpereHoursPerKilogram;
}
