namespace SacrificialTape.Tests;

/// <summary>A first-year rate, zinc to lose as a multiple of it, and a time exponent.</summary>
public sealed record LossCase(double Rate, double Ratio, double Exponent)
{
    internal double LossUm => this.Rate * this.Ratio;
}
