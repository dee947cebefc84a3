using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.TakeOff;
using UnitsNet;

namespace SacrificialTape.Costing;

/// <summary>What a job costs: rolls, labour, access, consumables, waste and what the user adds.</summary>
/// <remarks>
/// <para>Area: more than 0. Nothing is guessed: a stock without a price or work without a norm is refused by name.</para>
/// <para>Amounts are exact decimals: quantities in double are taken to 15 significant digits. <see cref="ToLedger()"/>
/// rounds line by line to what can be paid.</para>
/// </remarks>
/// <example><code source="CostPage.cs" region="estimate" /></example>
public sealed record CostEstimate : IHasWorkings
{
    private readonly StoredNumber squareMeters;

    /// <summary>Estimates a cost.</summary>
    /// <param name="takeOff">The rolls to buy, spare included.</param>
    /// <param name="area">Area of steel covered.</param>
    /// <param name="work">The work to do.</param>
    /// <param name="prices">The user's own prices and norms.</param>
    /// <exception cref="ArgumentOutOfRangeException">The area is not more than 0.</exception>
    /// <exception cref="ArgumentException">A stock has no price, or work has no norm.</exception>
    public CostEstimate(StripTakeOff takeOff, Area area, IEnumerable<LabourWork> work, CostPrices prices)
    {
        ValueList<LabourWork> allWork = work.Listed();
        ArgumentNullException.ThrowIfNull(takeOff);
        ArgumentNullException.ThrowIfNull(prices);
        this.squareMeters = new StoredNumber(
            AcceptedRange.Above(0, "m2").Check(UnitConversions.SquareMeters(area), nameof(area)));
        if (takeOff.Stocks.FirstOrDefault(stock => prices.PriceOf(stock.Stock) is null) is { } unpriced)
        {
            throw new ArgumentException($"No price is given for a roll of {unpriced.Stock}.", nameof(prices));
        }

        if (allWork.FirstOrDefault(one => !prices.Norms.Any(norm => norm.Kind == one.Kind)) is { } unknown)
        {
            throw new ArgumentException($"No norm says how long this work takes: {unknown.Kind}.", nameof(prices));
        }

        this.TakeOff = takeOff;
        this.Work = allWork;
        this.Prices = prices;
        this.Lines = new ValueList<CostLine>(
            [.. this.RollLines(), .. this.LabourLines(default(NoSteps)), .. this.AccessLines(), .. this.AreaLines(), .. this.WasteLines(), .. this.OwnLines()]);
        this.FirstCost = Sum(this.Lines.Where(static line => line.Timing.IsAtStart));
    }

    /// <summary>The rolls to buy.</summary>
    public StripTakeOff TakeOff { get; }

    /// <summary>The work to do.</summary>
    public ValueList<LabourWork> Work { get; }

    /// <summary>The user's own prices and norms.</summary>
    public CostPrices Prices { get; }

    /// <summary>Area of steel covered.</summary>
    public Area Area => Area.FromSquareMeters(this.squareMeters.Bare);

    /// <summary>All lines, those of later years too.</summary>
    public ValueList<CostLine> Lines { get; }

    /// <summary>What is paid at the start, exact.</summary>
    public Money FirstCost { get; }

    /// <summary>What is paid at the start, for 1 m2 of steel covered.</summary>
    public Money FirstCostPerSquareMeter => this.FirstCost.Divide((decimal)this.squareMeters.Bare);

    /// <summary>The user's own costs of later years.</summary>
    public ValueList<ICostItem> Later => new(this.Prices.Own.Where(static item => !item.Timing.IsAtStart));

    /// <summary>What is paid at the start for one kind, exact.</summary>
    /// <param name="kind">The kind.</param>
    public Money FirstCostOf(CostKind kind) => Sum(this.Lines.Where(line => line.Kind == kind && line.Timing.IsAtStart));

    /// <summary>The first cost rounded line by line to the minor unit of the currency.</summary>
    /// <exception cref="InvalidOperationException">The currency is not in <see cref="MinorUnits"/>: state the digits.</exception>
    public CostLedger ToLedger() => this.ToLedger(MinorUnits.DigitsOf(this.Prices.Currency));

    /// <summary>The first cost rounded line by line.</summary>
    /// <param name="minorDigits">Decimal digits of every amount, 0 to 8.</param>
    /// <exception cref="ArgumentOutOfRangeException">The digits are outside their range.</exception>
    public CostLedger ToLedger(int minorDigits) => new(
        this.Lines.Where(static line => line.Timing.IsAtStart), MinorUnits.Check(minorDigits), this.FirstCost);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var hours = new StepList();
        _ = this.LabourLines(hours).Count();
        var steps = new StepList();
        decimal sum = 0;
        foreach (CostLine line in this.Lines.Where(static line => line.Timing.IsAtStart))
        {
            steps.Add(CostFormulas.Item, [line.Quantity.Number, (double)line.UnitPrice.Amount], (double)line.Amount.Amount);
            steps.Add(CostFormulas.Sum, [(double)sum, (double)line.Amount.Amount], (double)(sum + line.Amount.Amount));
            sum += line.Amount.Amount;
        }

        steps.Add(CostFormulas.PerArea, [(double)sum, this.squareMeters.Bare], (double)this.FirstCostPerSquareMeter.Amount);
        string title = $"First cost in {this.Prices.Currency}";
        return new Workings(title, new ValueList<WorkingStep>(hours.Under(title).Steps.Concat(steps.Under(title).Steps)));
    }

    /// <summary>First cost and area in a few words.</summary>
    public override string ToString() => $"{this.FirstCost} for {MeasureText.Write(this.squareMeters.Bare, TradeUnit.SquareMeter, 6)}";

    private Money Sum(IEnumerable<CostLine> lines) =>
        lines.Aggregate(new Money(0, this.Prices.Currency), static (sum, line) => sum + line.Amount);

    private IEnumerable<CostLine> RollLines() => this.TakeOff.Stocks.Select(stock => new CostLine(
        CostKind.Rolls,
        stock.Stock.ToString(),
        new Measure(stock.Rolls, TradeUnit.One),
        this.Prices.PriceOf(stock.Stock)!.PerRoll,
        CostTiming.AtStart,
        stock.Stock));

    private IEnumerable<CostLine> LabourLines<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        foreach (LabourWork work in this.Work)
        {
            foreach (LabourNorm norm in this.Prices.Norms.Where(norm => norm.Kind == work.Kind))
            {
                double hours = work.By(norm.Measure) * norm.HoursPerUnit;
                if (TSteps.Records)
                {
                    steps.Add(CostFormulas.Hours, [work.By(norm.Measure), norm.HoursPerUnit], hours);
                }

                yield return new CostLine(
                    CostKind.Labour, norm.ToString(), new Measure(hours, TradeUnit.Hour), this.Prices.Labour.PerHour, CostTiming.AtStart);
            }
        }
    }

    private IEnumerable<CostLine> AccessLines() => this.Prices.Access.Select(static item => new CostLine(
        CostKind.Access, item.Name, new Measure(item.Days, TradeUnit.One), item.Price, CostTiming.AtStart));

    private IEnumerable<CostLine> AreaLines() => this.Prices.Consumables.Select(item => new CostLine(
        CostKind.Consumables, item.Name, new Measure(this.squareMeters.Bare, TradeUnit.SquareMeter), item.PerSquareMeter, CostTiming.AtStart));

    private IEnumerable<CostLine> WasteLines() => this.Prices.Waste is not { } waste
        ? []
        : this.TakeOff.Stocks.Select(stock => new CostLine(
            CostKind.Waste,
            "trim and offcuts of " + stock.Stock,
            new Measure(UnitConversions.Kilograms(stock.Stock.ZincMass(stock.Ledger.Trim + stock.Ledger.Offcut)), TradeUnit.Kilogram),
            waste.PerKilogram,
            CostTiming.AtStart,
            stock.Stock));

    private IEnumerable<CostLine> OwnLines() => this.Prices.Own.Select(static item => new CostLine(
        CostKind.Own, item.Name, new Measure(1, TradeUnit.One), item.Amount, item.Timing));
}
