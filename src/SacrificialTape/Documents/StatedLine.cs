using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Documents;

/// <summary>What one line came to, as an estimate that is kept in a file states it.</summary>
public sealed record StatedLine
{
    internal StatedLine(
        string tag, Measure covered, Measure leftClear, Measure stripLength, Lifetime earliest, Lifetime latest, bool lifeHolds, ValueList<StatedFinding> findings)
    {
        this.Tag = tag;
        this.Covered = covered;
        this.LeftClear = leftClear;
        this.StripLength = stripLength;
        this.Earliest = earliest;
        this.Latest = latest;
        this.LifeHolds = lifeHolds;
        this.Findings = findings;
    }

    /// <summary>Tag of the line.</summary>
    public string Tag { get; }

    /// <summary>Steel covered.</summary>
    public Measure Covered { get; }

    /// <summary>Steel left clear.</summary>
    public Measure LeftClear { get; }

    /// <summary>Length of all strips.</summary>
    public Measure StripLength { get; }

    /// <summary>The earliest end of the zinc that is plausible.</summary>
    public Lifetime Earliest { get; }

    /// <summary>The latest end of the zinc that is plausible.</summary>
    public Lifetime Latest { get; }

    /// <summary>Whether category and loss laws describe the line at all.</summary>
    public bool LifeHolds { get; }

    /// <summary>Its findings.</summary>
    public ValueList<StatedFinding> Findings { get; }

    /// <summary>Tag, strip and life in a few words.</summary>
    public override string ToString() => $"{this.Tag}: {MeasureText.Write(this.StripLength.In(TradeUnit.Meter), TradeUnit.Meter, 6)} of strip, {this.Earliest} to {this.Latest}, {this.Findings.Count} finding(s)";

    internal static StatedLine Of(LineEstimate line)
    {
        ValueList<StatedFinding> findings = new(line.Findings.Select(StatedFinding.Of));
        return new(
            line.Line.Tag,
            new Measure(UnitConversions.SquareMeters(line.Covered), TradeUnit.SquareMeter),
            new Measure(UnitConversions.SquareMeters(line.LeftClear), TradeUnit.SquareMeter),
            Measure.Of(line.StripLength),
            line.Life.Earliest,
            line.Life.Latest,
            !findings.Any(static finding => HazardRules.VoidsLife(finding.RuleId)),
            findings);
    }
}
