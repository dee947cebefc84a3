namespace SacrificialTape.Tests.Costing;

/// <summary>A discount rate and a time, on grids as they are stated.</summary>
public sealed record RateCase(double Rate, double Years)
{
    internal DiscountRate Discount => DiscountRate.FromFractionPerYear(this.Rate);

    internal TimeValue Value => new(this.Discount, Lifetime.Of(Duration.FromYears365(this.Years)));
}
