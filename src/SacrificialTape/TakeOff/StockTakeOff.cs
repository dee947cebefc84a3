using SacrificialTape.Provenance;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>What to order of one stocked strip, and where every metre of it goes.</summary>
public sealed record StockTakeOff : IHasWorkings
{
    private readonly CutOrder order;
    private readonly WholePieceBound wholePieces;
    private readonly int rule;

    internal StockTakeOff(
        StripStock stock, CutOrder order, WholePieceBound wholePieces, int rule, (long Taken, long Least, long Splices) rolls, StripLedger ledger)
    {
        this.order = order;
        this.wholePieces = wholePieces;
        this.rule = rule;
        this.Stock = stock;
        this.Rolls = rolls.Taken;
        this.LeastRolls = rolls.Least;
        this.Splices = rolls.Splices;
        this.PiecesLongerThanRoll = order.Strips
            .Where(strip => !strip.MaySplice && strip.LengthUm > order.RollUm).Sum(static strip => (long)strip.Count);
        this.Ledger = ledger;
    }

    /// <summary>The stocked strip.</summary>
    public StripStock Stock { get; }

    /// <summary>Rolls to order.</summary>
    public long Rolls { get; }

    /// <summary>A number that no plan of cutting can beat.</summary>
    public long LeastRolls { get; }

    /// <summary>Whether the plan is known to need the fewest rolls: it meets the bound. If not, it may still be the best.</summary>
    public bool ProvedMinimal => this.Rolls == this.LeastRolls;

    /// <summary>Places where a new roll begins within a strip.</summary>
    public long Splices { get; }

    /// <summary>Pieces that should be whole but are longer than a roll; they are counted with splices.</summary>
    public long PiecesLongerThanRoll { get; }

    /// <summary>Where every metre goes.</summary>
    public StripLedger Ledger { get; }

    /// <summary>Zinc in all rolls bought.</summary>
    [BasisOf(typeof(FoilFormulas), nameof(FoilFormulas.Mass))]
    public Mass ZincBought => this.Stock.ZincMass(this.Ledger.Bought);

    /// <summary>Zinc that ends up on the steel: cover, laps and splices.</summary>
    [BasisOf(typeof(FoilFormulas), nameof(FoilFormulas.Mass))]
    public Mass ZincLaid => this.Stock.ZincMass(this.Ledger.Cover + this.Ledger.Lap + this.Ledger.Splice);

    /// <summary>
    /// Writes the cut list: which pieces, runs and spare come from which roll. It is written anew with each call; that of
    /// a large survey is large.
    /// </summary>
    public CutPlan PlanCuts() => CutPlan.OfTakeOff(
        this.order.RollUm,
        this.order.Choices.ShortestUm,
        this.order.Patterns(this.wholePieces, this.rule),
        this.wholePieces,
        this.Ledger);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        StripLedger l = this.Ledger;
        _ = TakeOffKernel.LeastRolls(
            this.wholePieces.Count(steps), l.CoverUm, l.LapUm, l.TrimUm, l.ContingencyUm, this.Stock.RollUm / 1e3, steps);
        double bought = TakeOffKernel.BoughtMm(this.Rolls, this.Stock.RollUm / 1e3, steps);
        _ = TakeOffKernel.OffcutMm(bought, l, steps);
        _ = FoilKernel.Kilograms(
            bought, this.Stock.WidthMm, this.Stock.Tape.Foil.ThicknessMm, this.Stock.Tape.Foil.KilogramsPerCubicMeter, steps);
        return steps.Under("Take-off of " + this.Stock);
    }

    /// <summary>Rolls and stock in a few words.</summary>
    public override string ToString() => $"{this.Rolls} roll(s) of {this.Stock}";
}
