using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>The interval of one input over the data that a function was fitted to; both ends belong to it.</summary>
internal readonly record struct FitBound(string Input, double Low, double High, TradeUnit Unit)
{
    /// <summary>The bound that a value passes, or null.</summary>
    internal double? Passed(double value) => value < this.Low ? this.Low : value > this.High ? this.High : null;

    internal void Check(double value, string parameter) => AcceptedRange
        .Between(this.Low, this.High, TradeUnits.Symbol(this.Unit))
        .Noting($"{this.Input}: the data behind the function; {nameof(BeyondFit)}.{nameof(BeyondFit.AcceptWithFinding)} goes beyond")
        .Check(value, parameter);
}
