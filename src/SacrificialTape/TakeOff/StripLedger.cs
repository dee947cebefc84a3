using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>Where every metre of strip that was bought goes. Counted in whole micrometres, so that the sum closes exactly.</summary>
public sealed record StripLedger
{
    internal StripLedger(long coverUm, long lapUm, long trimUm, long spliceUm, in SpareLengths spare, long boughtUm)
    {
        this.CoverUm = coverUm;
        this.LapUm = lapUm;
        this.TrimUm = trimUm;
        this.SpliceUm = spliceUm;
        this.Spare = spare;
        this.ContingencyUm = spare.TotalUm;
        this.BoughtUm = boughtUm;
        if (this.OffcutUm < 0)
        {
            throw new InvalidOperationException($"The ledger does not close: {boughtUm} um bought, {-this.OffcutUm} um too few.");
        }
    }

    /// <summary>Covers the steel once (once more for each pass and each weld strip).</summary>
    public Length Cover => Length.FromMicrometers(this.CoverUm);

    /// <summary>Lies over neighbouring strips or over its own end.</summary>
    public Length Lap => Length.FromMicrometers(this.LapUm);

    /// <summary>Is cut off at the ends of the pipe.</summary>
    public Length Trim => Length.FromMicrometers(this.TrimUm);

    /// <summary>Laps where a new roll begins on the old.</summary>
    public Length Splice => Length.FromMicrometers(this.SpliceUm);

    /// <summary>Spare, all its parts.</summary>
    public Length Contingency => Length.FromMicrometers(this.ContingencyUm);

    /// <summary>What is left on rolls and in remnants.</summary>
    public Length Offcut => Length.FromMicrometers(this.OffcutUm);

    /// <summary>All that is bought: the sum of the above.</summary>
    public Length Bought => Length.FromMicrometers(this.BoughtUm);

    private SpareLengths Spare { get; }

    internal long CoverUm { get; }

    internal long LapUm { get; }

    internal long TrimUm { get; }

    internal long SpliceUm { get; }

    internal long ContingencyUm { get; }

    internal long BoughtUm { get; }

    internal long OffcutUm => this.BoughtUm - this.NeededUm - this.SpliceUm - this.ContingencyUm;

    internal long NeededUm => this.CoverUm + this.LapUm + this.TrimUm;

    /// <summary>One part of the spare; all parts together are <see cref="Contingency"/>.</summary>
    /// <param name="part">Which part.</param>
    public Length SpareFor(SparePart part) => Length.FromMicrometers(this.Spare.Of(part));

    /// <summary>Bought and its parts in a few words.</summary>
    public override string ToString() => $"bought {MeasureText.Write(this.BoughtUm / 1e6, TradeUnit.Meter, 6)}: cover {MeasureText.Write(this.CoverUm / 1e6, TradeUnit.Meter, 6)}, lap {MeasureText.Write(this.LapUm / 1e6, TradeUnit.Meter, 6)}, trim {MeasureText.Write(this.TrimUm / 1e6, TradeUnit.Meter, 6)}, splices {MeasureText.Write(this.SpliceUm / 1e6, TradeUnit.Meter, 6)}, contingency {MeasureText.Write(this.ContingencyUm / 1e6, TradeUnit.Meter, 6)}, offcut {MeasureText.Write(this.OffcutUm / 1e6, TradeUnit.Meter, 6)}";
}
