using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Costing;

/// <summary>
/// The first cost as it is written on paper: every line rounded to the minor unit, and a total that is the sum of the
/// lines written. It closes to the last minor unit.
/// </summary>
public sealed record CostLedger
{
    private readonly Money exact;

    internal CostLedger(IEnumerable<CostLine> lines, int minorDigits, Money exact)
    {
        this.MinorDigits = minorDigits;
        this.exact = exact;
        this.Lines = new ValueList<CostLedgerLine>(lines.Select(line => new CostLedgerLine(line, line.Amount.Rounded(minorDigits))));
        this.Total = this.Lines.Aggregate(exact.Multiply(0), static (sum, line) => sum + line.Amount);
    }

    /// <summary>Decimal digits of every amount.</summary>
    public int MinorDigits { get; }

    /// <summary>The lines, paid at the start.</summary>
    public ValueList<CostLedgerLine> Lines { get; }

    /// <summary>The sum of the lines as written.</summary>
    public Money Total { get; }

    /// <summary>What rounding line by line added to the exact sum: at most half a minor unit a line.</summary>
    [BasisOf(typeof(CostFormulas), nameof(CostFormulas.Sum))]
    public Money RoundingDifference => this.Total - this.exact;

    /// <summary>The total of one kind, as written.</summary>
    /// <param name="kind">The kind.</param>
    [BasisOf(typeof(CostFormulas), nameof(CostFormulas.Sum))]
    public Money TotalOf(CostKind kind) => this.Lines
        .Where(line => line.Line.Kind == kind)
        .Aggregate(this.Total.Multiply(0), static (sum, line) => sum + line.Amount);

    /// <summary>The lines and the total as plain text.</summary>
    public override string ToString() => string.Join('\n', this.Lines.Select(static line => line.ToString()).Append($"Total: {this.Total}"));
}
