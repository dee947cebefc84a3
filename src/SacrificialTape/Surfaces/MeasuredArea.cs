using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>An area that somebody measured, with a stated allowance: for what no other surface describes.</summary>
/// <remarks>
/// Area: more than 0, at most 1 000 000 m2. The note is required and says who measured what, how, and why the allowance
/// is what it is; it stands in the workings as the basis, an engineer's judgement. It is the last resort: a surface with
/// dimensions can be checked by somebody else, this one cannot.
/// </remarks>
public sealed record MeasuredArea : Surface
{
    private static readonly AcceptedRange Accepted = AcceptedRange.AboveUpTo(0, 1e6, "m2");

    private readonly StoredNumber squareMeters;

    /// <summary>States a measured area.</summary>
    /// <param name="measured">As measured.</param>
    /// <param name="allowance">What is added for what was not seen or not measured.</param>
    /// <param name="note">Who measured what, how, and why this allowance.</param>
    /// <exception cref="ArgumentOutOfRangeException">The area is outside its range.</exception>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public MeasuredArea(Area measured, AreaAllowance allowance, string note)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(note);
        this.squareMeters = new StoredNumber(Accepted.Check(UnitConversions.SquareMeters(measured), nameof(measured)));
        _ = allowance.Fraction;
        this.Allowance = allowance;
        this.Note = note;
    }

    /// <summary>Area as measured.</summary>
    public Area Measured => Area.FromSquareMeters(this.squareMeters.Bare);

    /// <summary>What is added to it.</summary>
    public AreaAllowance Allowance { get; }

    /// <summary>Who measured what, how, and why this allowance.</summary>
    public string Note { get; }

    /// <summary>On what the area rests: judgement, in the words of the note.</summary>
    public Basis Basis => Basis.Judgement(this.Note);

    /// <inheritdoc/>
    [BasisOf(typeof(SupportFormulas), nameof(SupportFormulas.Measured))]
    public override Area Area => Area.FromSquareMeters(
        SupportKernel.MeasuredSquareMeters(this.squareMeters.Bare, this.Allowance.Fraction, this.Basis, default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"measured area {this.squareMeters.Bare:0.####} m2 with an allowance of {100 * this.Allowance.Fraction:0.##} %: {this.Note}");

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = SupportKernel.MeasuredSquareMeters(this.squareMeters.Bare, this.Allowance.Fraction, this.Basis, steps);
        return steps.Under("Area of " + this.Description);
    }
}
