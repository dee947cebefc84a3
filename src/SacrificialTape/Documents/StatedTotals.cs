using SacrificialTape.Jobs;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>What a whole job came to, as an estimate that is kept in a file states it: nobody has to add up lines and stocks.</summary>
public sealed record StatedTotals
{
    internal StatedTotals(Measure covered, Measure leftClear, Measure stripLength, int rolls, Measure zincBought, Measure zincLaid)
    {
        this.Covered = covered;
        this.LeftClear = leftClear;
        this.StripLength = stripLength;
        this.Rolls = rolls;
        this.ZincBought = zincBought;
        this.ZincLaid = zincLaid;
    }

    /// <summary>Steel covered by all lines.</summary>
    public Measure Covered { get; }

    /// <summary>Steel left clear on all lines.</summary>
    public Measure LeftClear { get; }

    /// <summary>Length of all strips, without splices, spare and offcuts.</summary>
    public Measure StripLength { get; }

    /// <summary>Rolls to order, of all stocks.</summary>
    public int Rolls { get; }

    /// <summary>Zinc in all rolls.</summary>
    public Measure ZincBought { get; }

    /// <summary>Zinc that ends up on the steel.</summary>
    public Measure ZincLaid { get; }

    /// <summary>Area, strip and rolls in a few words.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Covered} covered, {MeasureText.Write(this.StripLength.In(TradeUnit.Meter), TradeUnit.Meter, 6)} of strip, {this.Rolls} roll(s)");

    internal static StatedTotals Of(JobEstimate estimate) => new(
        new Measure(UnitConversions.SquareMeters(estimate.Covered), TradeUnit.SquareMeter),
        new Measure(UnitConversions.SquareMeters(estimate.LeftClear), TradeUnit.SquareMeter),
        Measure.Of(estimate.StripLength),
        checked((int)estimate.TakeOff.Stocks.Sum(static stock => stock.Rolls)),
        new Measure(UnitConversions.Kilograms(estimate.TakeOff.ZincBought), TradeUnit.Kilogram),
        new Measure(UnitConversions.Kilograms(estimate.TakeOff.ZincLaid), TradeUnit.Kilogram));
}
