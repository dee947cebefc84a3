using SacrificialTape.Provenance;

namespace SacrificialTape.ServiceLife;

/// <summary>How zinc beside bare steel is used up. There are two ways to count, and no third.</summary>
/// <remarks>
/// Either own corrosion is counted separately and the demand goes with the theoretical capacity
/// (<see cref="OwnCorrosionAndDemand"/>), or the demand goes with a practical capacity, which already contains own
/// corrosion (<see cref="DemandAtPracticalCapacity"/>). Own corrosion is never counted twice, and never left out.
/// </remarks>
public abstract record ZincConsumption
{
    private protected ZincConsumption()
    {
    }

    /// <summary>On what the count rests.</summary>
    public abstract Basis Basis { get; }

    internal abstract double AmpereHoursPerKilogram { get; }
}
