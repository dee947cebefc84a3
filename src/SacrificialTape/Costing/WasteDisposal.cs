using SacrificialTape.Quantities;

namespace SacrificialTape.Costing;

/// <summary>What it costs to be rid of trim and offcuts, by the kilogram of zinc in them. The user's own data.</summary>
/// <remarks>
/// Price: may be negative where scrap is paid for. Only the zinc is weighed; adhesive, film and liner go with it, so set
/// the price accordingly. Whole unopened remnants count as offcut although they may be kept.
/// </remarks>
public sealed record WasteDisposal
{
    /// <summary>States a price.</summary>
    /// <param name="perKilogram">For 1 kg of zinc in trim and offcuts.</param>
    public WasteDisposal(Money perKilogram)
    {
        _ = perKilogram.Amount;
        this.PerKilogram = perKilogram;
    }

    /// <summary>Price for 1 kg of zinc in trim and offcuts.</summary>
    public Money PerKilogram { get; }

    /// <summary>The price in a few words.</summary>
    public override string ToString() => $"{this.PerKilogram} per {MeasureText.Write(1, TradeUnit.Kilogram, 1)}";
}
