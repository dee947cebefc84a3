using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.TakeOff;

namespace SacrificialTape.Jobs;

/// <summary>A combination that meets every rule, with what it costs.</summary>
public sealed record AcceptedLay
{
    internal AcceptedLay(
        TriedLay tried, SurveyLine line, LifeEstimate life, StripTakeOff takeOff, ValueList<Finding> findings, (Money Rolls, Money Labour, Money Waste, Money Other) cost)
    {
        this.Tried = tried;
        this.Line = line;
        this.Life = life;
        this.TakeOff = takeOff;
        this.Findings = findings;
        this.RollCost = cost.Rolls;
        this.LabourCost = cost.Labour;
        this.WasteCost = cost.Waste;
        this.OtherCost = cost.Other;
        this.Cost = cost.Rolls + cost.Labour + cost.Waste + cost.Other;
        this.Pieces = line.LayStrips.Sum(static strip => (long)strip.Count);
    }

    /// <summary>The combination.</summary>
    public TriedLay Tried { get; }

    /// <summary>The survey line with this lay.</summary>
    public SurveyLine Line { get; }

    /// <summary>How long the zinc lasts.</summary>
    public LifeEstimate Life { get; }

    /// <summary>The rolls of this line alone, weld strips included.</summary>
    public StripTakeOff TakeOff { get; }

    /// <summary>Findings that do not reject it.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>What it costs at the start, exact: the sum of the four below.</summary>
    public Money Cost { get; }

    /// <summary>Rolls: whole, or by the share that is used up.</summary>
    public Money RollCost { get; }

    /// <summary>Working time of the lay. That of weld strips is the same for all and not counted.</summary>
    public Money LabourCost { get; }

    /// <summary>Disposal of trim and of the offcuts that are paid.</summary>
    public Money WasteCost { get; }

    /// <summary>Access, consumables and the user's own first costs.</summary>
    public Money OtherCost { get; }

    /// <summary>Strips of the lay.</summary>
    public long Pieces { get; }

    /// <summary>Combination, cost and life in a few words.</summary>
    public override string ToString() => $"{this.Tried}: {this.Cost.Rounded()}, {this.TakeOff.Stocks.Sum(static stock => stock.Rolls)} roll(s), {this.Life}";

    /// <summary>Cheap before dear; among equals the longer earliest life, then the fewer pieces, then the combination itself.</summary>
    internal static int Compare(AcceptedLay one, AcceptedLay other)
    {
        int order = one.Cost.CompareTo(other.Cost);
        order = order != 0 ? order : other.Life.Earliest.CompareTo(one.Life.Earliest);
        order = order != 0 ? order : one.Pieces.CompareTo(other.Pieces);
        return order != 0 ? order : TriedLay.Compare(one.Tried, other.Tried);
    }
}
