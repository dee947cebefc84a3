using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>An oval patch over a cut-out: an ellipse with the same middle and axes.</summary>
/// <remarks>
/// <para>Length and width: 0.1 mm to 100 m, along the length and the width of the cut-out.</para>
/// <para>The margin is the clear distance from the edge of the cut-out to the edge of the patch, at the place where it is
/// least. Growing the axes of an oval cut-out by the margin is not enough: the clear distance is then less between the axes.</para>
/// </remarks>
/// <example><code source="PatchesAndRepairPage.cs" region="smallest" /></example>
public sealed record OvalPatch : IHasWorkings
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(0.1, 100_000, "mm");

    private readonly StoredNumber lengthMm;
    private readonly StoredNumber widthMm;
    private readonly StoredNumber marginMm;
    private readonly StoredNumber stepMm;

    /// <summary>A patch of a given size, to be held against the margin.</summary>
    /// <param name="cutOut">The cut-out.</param>
    /// <param name="length">Along the length of the cut-out.</param>
    /// <param name="width">Along its width.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public OvalPatch(CutOut cutOut, Length length, Length width)
    {
        ArgumentNullException.ThrowIfNull(cutOut);
        this.CutOut = cutOut;
        this.lengthMm = new StoredNumber(Accepted.Check(UnitConversions.Millimeters(length), nameof(length)));
        this.widthMm = new StoredNumber(Accepted.Check(UnitConversions.Millimeters(width), nameof(width)));
    }

    private OvalPatch(CutOut cutOut, double marginMm, double? stepMm)
    {
        this.CutOut = cutOut;
        this.marginMm = new StoredNumber(marginMm);
        this.stepMm = stepMm is { } step ? new StoredNumber(step) : default;
        (double length, double width) = this.Solve(default(NoSteps));
        this.lengthMm = new StoredNumber(length);
        this.widthMm = new StoredNumber(width);
    }

    /// <summary>The cut-out.</summary>
    public CutOut CutOut { get; }

    /// <summary>Along the length of the cut-out.</summary>
    public Length Length => Length.FromMillimeters(this.LengthMm);

    /// <summary>Along the width of the cut-out.</summary>
    public Length Width => Length.FromMillimeters(this.WidthMm);

    /// <summary>Area of the patch.</summary>
    public Area Area => Area.FromSquareMeters(PatchKernel.OvalSquareM(this.LengthMm, this.WidthMm, default(NoSteps)));

    /// <summary>The least clear distance from cut-out to edge; below zero where the cut-out sticks out.</summary>
    [BasisOf(typeof(PatchFormulas), nameof(PatchFormulas.Clear))]
    public Length ClearDistance => Length.FromMillimeters(this.ClearMm);

    internal double LengthMm => this.lengthMm.Bare;

    internal double WidthMm => this.widthMm.Bare;

    internal double ClearMm => PatchKernel.ClearMm(this.CutOut.Half, this.LengthMm / 2, this.WidthMm / 2);

    internal PatchShape Half => new(false, this.LengthMm / 2, this.WidthMm / 2);

    /// <summary>The oval of least area that clears the cut-out by the margin everywhere.</summary>
    /// <param name="cutOut">The cut-out.</param>
    /// <param name="margin">Clear distance, 0 to 1 m.</param>
    /// <param name="step">Length and width are rounded up to whole steps, 0.1 to 100 mm; left out: not rounded.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static OvalPatch Smallest(CutOut cutOut, Length margin, Length? step = null)
    {
        ArgumentNullException.ThrowIfNull(cutOut);
        double clear = AcceptedRange.Between(0, 1000, "mm").Check(UnitConversions.Millimeters(margin), nameof(margin));
        double? whole = step is { } given
            ? AcceptedRange.Between(0.1, 100, "mm").Check(UnitConversions.Millimeters(given), nameof(step))
            : null;
        return new(cutOut, clear, whole);
    }

    /// <summary>Holds the clear distance against the margin that patches need.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        var clear = new Measure(this.ClearMm, TradeUnit.Millimeter);
        if (rules[RuleIds.MinimumPatchMargin].Judge(clear, subject) is { } margin)
        {
            yield return margin;
        }
        else if (rules[RuleIds.MinimumLap].Judge(clear, subject) is { } lap)
        {
            yield return rules[RuleIds.PatchBelowLap].State(subject, clear, lap.Limit);
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        if (this.marginMm.IsSet)
        {
            _ = this.Solve(steps);
        }

        _ = PatchKernel.OvalSquareM(this.LengthMm, this.WidthMm, steps);
        return steps.Under("Oval patch over " + this.CutOut);
    }

    /// <summary>Size and clear distance in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"oval patch {this.LengthMm:0.##} x {this.WidthMm:0.##} mm over {this.CutOut}, clear by {this.ClearMm:0.##} mm");

    private (double LengthMm, double WidthMm) Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        (double length, double width) = PatchKernel.Smallest(this.CutOut.Half, this.marginMm.Bare, steps);
        return this.stepMm.IsSet
            ? PatchKernel.AsCut(length, width, this.stepMm.Bare, steps)
            : (2 * length, 2 * width);
    }
}
