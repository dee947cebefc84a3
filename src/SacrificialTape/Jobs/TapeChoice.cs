using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>
/// The cheapest lay of what can be had that lasts long enough and meets every rule, with the runners-up in order, and
/// with the reasons of all that do not.
/// </summary>
/// <remarks>
/// <para>Every combination of stock, lap, passes and kind of lay is tried; none is left out by a guess, so that the first
/// is never dearer than any other that is accepted. The order is total: cost, then the longer earliest life, the fewer
/// pieces, kind of lay, passes, lap, and the stock itself.</para>
/// <para>Cost is what is paid at the start for this line alone: with other lines on the same rolls the sum can be
/// smaller. It is no sum over the life: see <see cref="CostComparison"/> for that.</para>
/// </remarks>
/// <example><code source="ChoicePage.cs" region="choose" /></example>
public sealed record TapeChoice
{
    private TapeChoice(LineNeeds needs, ChoiceOptions options, AcceptedLay[] accepted, RejectedLay[] rejected)
    {
        this.Needs = needs;
        this.Options = options;
        this.Accepted = ValueList<AcceptedLay>.Owning(accepted);
        this.Rejected = ValueList<RejectedLay>.Owning(rejected);
    }

    /// <summary>What the line needs.</summary>
    public LineNeeds Needs { get; }

    /// <summary>What was chosen among.</summary>
    public ChoiceOptions Options { get; }

    /// <summary>All that do, cheapest first.</summary>
    public ValueList<AcceptedLay> Accepted { get; }

    /// <summary>All that do not, in a fixed order.</summary>
    public ValueList<RejectedLay> Rejected { get; }

    /// <summary>The cheapest that does; null where none does.</summary>
    public AcceptedLay? Best => this.Accepted.Count > 0 ? this.Accepted[0] : null;

    /// <summary>Tries every combination.</summary>
    /// <param name="needs">What the line needs.</param>
    /// <param name="options">What to choose among.</param>
    /// <exception cref="ArgumentException">The stock along the welds has no price.</exception>
    /// <exception cref="InvalidOperationException">A kind of lay made a lay of another surface or stock than it was asked for.</exception>
    public static TapeChoice Among(LineNeeds needs, ChoiceOptions options)
    {
        ArgumentNullException.ThrowIfNull(needs);
        ArgumentNullException.ThrowIfNull(options);
        if (needs.Welds is { } welds && options.Prices.PriceOf(welds.Stock) is null)
        {
            throw new ArgumentException($"No price is given for a roll of {welds.Stock}, which goes along the welds.", nameof(options));
        }

        var accepted = new List<AcceptedLay>();
        var rejected = new List<RejectedLay>();
        var lives = new LifeEstimates(options.Rules);
        foreach (ILayMaker maker in options.Makers)
        {
            foreach (int passes in options.Passes)
            {
                var choices = new LayChoices(options.LayChoices.EndLap, options.LayChoices.HandWander, passes, maker.Labour.Method);
                foreach (Length lap in options.LeastLaps)
                {
                    foreach (StripStock stock in options.Stocks)
                    {
                        var tried = new TriedLay(stock, UnitConversions.Millimeters(lap), passes, maker.Name);
                        Try(tried, needs, options, (maker, choices, lives), accepted, rejected);
                    }
                }
            }
        }

        accepted.Sort(AcceptedLay.Compare);
        rejected.Sort(static (one, other) => TriedLay.Compare(one.Tried, other.Tried));
        return new(needs, options, [.. accepted], [.. rejected]);
    }

    /// <summary>The best and the counts in a few words.</summary>
    public override string ToString() => $"{this.Needs.Tag}: {this.Best?.ToString() ?? "nothing does"}; {this.Accepted.Count} accepted, {this.Rejected.Count} rejected";

    private static void Try(
        TriedLay tried,
        LineNeeds needs,
        ChoiceOptions options,
        (ILayMaker Maker, LayChoices Choices, LifeEstimates Lives) by,
        List<AcceptedLay> accepted,
        List<RejectedLay> rejected)
    {
        SurveyLine line;
        StripTakeOff takeOff;
        try
        {
            line = needs.With(Made(tried, by.Maker, by.Choices));
            takeOff = StripTakeOff.Of(line.Welds is { } welds ? welds.Strips.Concat(line.LayStrips) : line.LayStrips, options.TakeOff);
        }
        catch (Exception thrown) when (thrown is ArgumentException or OverflowException)
        {
            // The prices were checked before, so what is refused here is the lay on this surface, or its rolls.
            rejected.Add(new RejectedLay(tried, ValueList<Finding>.Empty, thrown.Message));
            return;
        }

        LifeEstimate life = by.Lives.Of(line);
        Finding[] findings = [.. LineEstimator.Judge(line, life, options.JudgedBy), .. takeOff.Judge(options.Rules)];
        Finding[] against = [.. findings.Where(options.Rejects)];
        if (against.Length > 0)
        {
            rejected.Add(new RejectedLay(tried, ValueList<Finding>.Owning(against), null));
            return;
        }

        accepted.Add(new AcceptedLay(
            tried, line, life, takeOff, ValueList<Finding>.Owning(findings), ChoiceCost.Of(line, takeOff, by.Maker.Labour, options)));
    }

    private static ILay Made(TriedLay tried, ILayMaker maker, LayChoices choices)
    {
        ILay lay = maker.Make(tried.Stock, tried.LeastLap, choices);
        return lay.Surface.Equals(maker.Surface) && lay.Stock.Equals(tried.Stock)
            ? lay
            : throw new InvalidOperationException($"'{maker.Name}' was asked for {tried.Stock} on {maker.Surface} and made {lay.Stock} on {lay.Surface}.");
    }
}
