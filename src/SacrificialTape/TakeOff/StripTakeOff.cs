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
/// <see cref="StockTakeOff.PlanCuts"/> for the cut list.
/// </remarks>
/// <example><code source="TakeOffPage.cs" region="ledger" /></example>
public sealed record StripTakeOff : IHasWorkings
{
    private const double MostRolls = 10_000_000;

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
    /// <exception cref="ArgumentOutOfRangeException">The strip needed exceeds 10 million rolls.</exception>
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

    /// <summary>The steps of every stock in their order.</summary>
    public Workings ShowWorkings() => Workings.Joined("Take-off", this.Stocks);

    /// <summary>The rolls of every stock.</summary>
    public override string ToString() => string.Join("; ", this.Stocks);

    private static StockTakeOff Of(StripStock stock, List<Strip> strips, TakeOffChoices choices)
    {
        long rollUm = stock.RollUm;
        if (strips.Exists(strip => strip.MaySplice || strip.LengthUm > rollUm))
        {
            AcceptedRange.AtLeast(2 * choices.ShortestUm / 1e6, "m").Noting("two of the shortest pieces worth splicing in")
                .Check(rollUm / 1e6, "strips: roll length");
        }

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

        // Cutting goes roll by roll: more than anyone orders would take minutes before it failed.
        AcceptedRange.Between(0, MostRolls, "rolls of strip").Check((double)(cover + lap + trim) / rollUm, nameof(strips));
        SpareLengths spare = choices.Spare.Of(cover + lap + trim);
        AcceptedRange.Between(0, MostRolls, "rolls of spare").Check((double)spare.TotalUm / rollUm, nameof(choices));
        long contingency = spare.TotalUm;
        var order = new CutOrder(rollUm, choices, new ValueList<Strip>(strips), contingency);
        WholePieceBound wholePieces = WholePieceBound.Of(order.WholePieces());
        long least = (long)TakeOffKernel.LeastRolls(wholePieces.Rolls, cover, lap, trim, contingency, rollUm / 1e3, default(NoSteps));
        (long rolls, long splices, int rule) = order.Count(wholePieces, least);
        var ledger = new StripLedger(
            cover, lap, trim, checked(splices * choices.SpliceLapUm), spare, checked(rolls * rollUm));
        return new StockTakeOff(stock, order, wholePieces, rule, (rolls, least, splices), ledger);
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
