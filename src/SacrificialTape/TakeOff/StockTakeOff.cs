using SacrificialTape.Provenance;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>What to order of one stocked strip, and where every metre of it goes.</summary>
public sealed record StockTakeOff : IHasWorkings
{
    internal StockTakeOff(StripStock stock, CutPlan cutPlan, long splices, long piecesLongerThanRoll, StripLedger ledger)
    {
        this.Stock = stock;
        this.CutPlan = cutPlan;
        this.Splices = splices;
        this.PiecesLongerThanRoll = piecesLongerThanRoll;
        this.Ledger = ledger;
    }

    /// <summary>The stocked strip.</summary>
    public StripStock Stock { get; }

    /// <summary>Which pieces, runs and spare come from which roll.</summary>
    public CutPlan CutPlan { get; }

    /// <summary>Rolls to order.</summary>
    public long Rolls => this.CutPlan.Rolls;

    /// <summary>A number that no plan of cutting can beat.</summary>
    public long LeastRolls => this.CutPlan.LeastRolls;

    /// <summary>Whether the plan is known to need the fewest rolls: it meets the bound. If not, it may still be the best.</summary>
    public bool ProvedMinimal => this.CutPlan.ProvedMinimal;

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

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.CutPlan.Bound(steps);
        double bought = TakeOffKernel.BoughtMm(this.Rolls, this.Stock.RollUm / 1e3, steps);
        _ = TakeOffKernel.OffcutMm(bought, this.Ledger, steps);
        _ = FoilKernel.Kilograms(
            bought, this.Stock.WidthMm, this.Stock.Tape.Foil.ThicknessMm, this.Stock.Tape.Foil.KilogramsPerCubicMeter, steps);
        return steps.Under("Take-off of " + this.Stock);
    }

    /// <summary>Rolls and stock in a few words.</summary>
    public override string ToString() => $"{this.Rolls} roll(s) of {this.Stock}";
}
