using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>The strips of a job turned into whole rolls, stock by stock.</summary>
/// <remarks>
/// Whole pieces (rings, level turns, girth weld strips) are planned first, by the best of several rules; strips that may
/// be spliced then run along the remnants and new rolls in the order given. It is no search of all plans: see
/// <see cref="StockTakeOff.LeastRolls"/> for how far from the best it can be at most, and
/// <see cref="StockTakeOff.CutPlan"/> for the cut list.
/// </remarks>
public sealed record StripTakeOff
{
    private StripTakeOff(TakeOffChoices choices, ValueList<StockTakeOff> stocks)
    {
        this.Choices = choices;
        this.Stocks = stocks;
    }

    /// <summary>How strips are cut and how much spare is bought.</summary>
    public TakeOffChoices Choices { get; }

    /// <summary>What to order, thin foil before thick, narrow strip before wide.</summary>
    public ValueList<StockTakeOff> Stocks { get; }

    /// <summary>Zinc in all rolls bought.</summary>
    [BasisOf(typeof(FoilFormulas), nameof(FoilFormulas.Mass))]
    public Mass ZincBought => Mass.FromKilograms(this.Stocks.Sum(static stock => UnitConversions.Kilograms(stock.ZincBought)));

    /// <summary>Zinc that ends up on the steel.</summary>
    [BasisOf(typeof(FoilFormulas), nameof(FoilFormulas.Mass))]
    public Mass ZincLaid => Mass.FromKilograms(this.Stocks.Sum(static stock => UnitConversions.Kilograms(stock.ZincLaid)));

    /// <summary>Turns strips into rolls.</summary>
    /// <param name="strips">The strips of all lays.</param>
    /// <param name="choices">How strips are cut and how much spare is bought.</param>
    /// <exception cref="ArgumentOutOfRangeException">A roll is shorter than two of the shortest pieces worth splicing.</exception>
    /// <exception cref="OverflowException">The strip needed exceeds 9 million km.</exception>
    public static StripTakeOff Of(IEnumerable<Strip> strips, TakeOffChoices choices)
    {
        ArgumentNullException.ThrowIfNull(strips);
        ArgumentNullException.ThrowIfNull(choices);
        var totals = new List<StockTakeOff>();
        foreach ((StripStock stock, List<Strip> cut) in ByStock(strips))
        {
            totals.Add(Of(stock, cut, choices));
        }

        return new(choices, new ValueList<StockTakeOff>(totals
            .OrderBy(static total => total.Stock.Tape.Foil.ThicknessMm)
            .ThenBy(static total => total.Stock.WidthMm)));
    }

    /// <summary>Holds the take-off against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    public IEnumerable<Finding> Judge(RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.Stocks.Any(static stock => stock.Splices > 0)
            && rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.SpliceLap), "splices") is { } lap)
        {
            yield return lap;
        }

        foreach (StockTakeOff stock in this.Stocks)
        {
            if (stock.PiecesLongerThanRoll > 0)
            {
                yield return rules[RuleIds.PieceWithinRoll].State(
                    stock.Stock.ToString(), new Measure(stock.PiecesLongerThanRoll, TradeUnit.One));
            }
        }
    }

    /// <summary>The rolls of every stock.</summary>
    public override string ToString() => string.Join("; ", this.Stocks);

    private static StockTakeOff Of(StripStock stock, List<Strip> strips, TakeOffChoices choices)
    {
        long rollUm = stock.RollUm;
        AcceptedRange.AtLeast(2 * choices.ShortestUm / 1e6, "m").Noting("two of the shortest pieces worth splicing in")
            .Check(rollUm / 1e6, "strips: roll length");
        long cover = 0;
        long lap = 0;
        long trim = 0;
        foreach (Strip strip in strips)
        {
            checked
            {
                cover += strip.CoverUm * strip.Count;
                lap += strip.LapUm * strip.Count;
                trim += strip.TrimUm * strip.Count;
            }
        }

        long contingency = (long)Math.Round((cover + lap + trim) * choices.Contingency.Fraction);
        var sizes = new PieceSizes(rollUm, strips
            .Where(strip => !strip.MaySplice && strip.LengthUm <= rollUm)
            .Select(static strip => (strip.LengthUm, (long)strip.Count)));
        WholePieceBound wholePieces = WholePieceBound.Of(sizes);
        long least = (long)TakeOffKernel.LeastRolls(wholePieces.Rolls, cover, lap, trim, contingency, rollUm / 1e3, default(NoSteps));

        // The plainest rule wins unless another takes fewer rolls, or as many and fewer splices.
        RollCutting? best = null;
        foreach (List<PackedRolls> plan in WholePiecePlans.Of(sizes, wholePieces))
        {
            RollCutting cutting = RollCutting.Of(rollUm, choices, plan, strips, contingency);
            if (best is null || (cutting.Rolls, cutting.Splices).CompareTo((best.Rolls, best.Splices)) < 0)
            {
                best = cutting;
            }

            if (best.Rolls == least || sizes.Sizes.Length == 0)
            {
                break;
            }
        }

        var ledger = new StripLedger(
            cover, lap, trim, checked(best!.Splices * choices.SpliceLapUm), contingency, checked(best.Rolls * rollUm));
        long longer = strips.Where(strip => !strip.MaySplice && strip.LengthUm > rollUm).Sum(static strip => (long)strip.Count);
        return new StockTakeOff(
            stock,
            CutPlan.OfTakeOff(rollUm, choices.ShortestUm, best.Tally.Patterns(), wholePieces, ledger),
            best.Splices,
            longer,
            ledger);
    }

    // Surveys share a few stock objects among many lines: look by reference first, by meaning only once per object.
    private static Dictionary<StripStock, List<Strip>> ByStock(IEnumerable<Strip> strips)
    {
        var byMeaning = new Dictionary<StripStock, List<Strip>>();
        var byReference = new Dictionary<StripStock, List<Strip>>(ReferenceEqualityComparer.Instance);
        foreach (Strip strip in strips)
        {
            if (!byReference.TryGetValue(strip.Stock, out List<Strip>? list))
            {
                if (!byMeaning.TryGetValue(strip.Stock, out list))
                {
                    list = [];
                    byMeaning.Add(strip.Stock, list);
                }

                byReference.Add(strip.Stock, list);
            }

            list.Add(strip);
        }

        return byMeaning;
    }
}
