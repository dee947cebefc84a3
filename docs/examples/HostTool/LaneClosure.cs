using SacrificialTape.Costing;
using SacrificialTape.Jobs;

namespace HostTool;

/// <summary>Nights on which a lane is closed, so many columns a night.</summary>
#region cost
public sealed record LaneClosure : ICostItem
{
    private readonly int nights;
    private readonly Money perNight;

    public LaneClosure(JobEstimate estimate, int columnsANight, Money perNight)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentOutOfRangeException.ThrowIfLessThan(columnsANight, 1);
        this.nights = (estimate.Lines.Count + columnsANight - 1) / columnsANight;
        this.perNight = perNight;
    }

    public string Name => $"lane closure, {this.nights} night(s)";

    public Money Amount => this.perNight.Multiply(this.nights);

    public CostTiming Timing => CostTiming.AtStart;
}
#endregion
