using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>By how much zinc and paint together outlast the sum of their lives, as one source has it.</summary>
/// <remarks>
/// Factors: 1 to 10, the highest not below the lowest. All that were found are for hot-dip zinc; none for foil on adhesive.
/// </remarks>
public sealed record DuplexFactor
{
    private readonly StoredNumber lowest;
    private readonly StoredNumber highest;

    /// <summary>States a range of the user's own.</summary>
    /// <param name="lowest">The lowest factor.</param>
    /// <param name="highest">The highest factor.</param>
    /// <param name="basis">On what it rests.</param>
    /// <exception cref="ArgumentOutOfRangeException">A factor is outside its range.</exception>
    public DuplexFactor(double lowest, double highest, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        this.lowest = new StoredNumber(AcceptedRange.Between(1, 10, "").Check(lowest));
        this.highest = new StoredNumber(AcceptedRange.Between(lowest, 10, "").Check(highest));
        this.Basis = basis;
    }

    /// <summary>1.4 in extreme to 2.7 in mild surroundings.</summary>
    public static DuplexFactor TechnicalPaper { get; } = new(1.4, 2.7, DuplexFormulas.Paper);

    /// <summary>1.5 to 2.3.</summary>
    public static DuplexFactor TradeAssociation { get; } = new(1.5, 2.3, Basis.From(References.DuplexTradeAssociation));

    /// <summary>1.5 to 2.5, as attributed to van Eijnsbergen.</summary>
    public static DuplexFactor AfterVanEijnsbergen { get; } = new(1.5, 2.5, Basis.From(References.DuplexVanEijnsbergen));

    /// <summary>All ranges that were read. They disagree at both ends.</summary>
    public static ValueList<DuplexFactor> Published { get; } = [TechnicalPaper, TradeAssociation, AfterVanEijnsbergen];

    /// <summary>The lowest factor.</summary>
    public double Lowest => this.lowest.Bare;

    /// <summary>The highest factor.</summary>
    public double Highest => this.highest.Bare;

    /// <summary>On what it rests.</summary>
    public Basis Basis { get; }

    /// <summary>The range and its basis.</summary>
    public override string ToString() =>
        $"{MeasureText.Write(this.Lowest, TradeUnit.One, 4)} to {MeasureText.Write(this.Highest, TradeUnit.One, 4)} [{this.Basis}]";
}
