using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Tape over paint: how much bare steel lies under it through contact windows, against how much is wanted.</summary>
/// <remarks>
/// Covered area: more than 0, at least the area of all windows. The figure of the trade applies to any one square metre;
/// from a count of windows only the average can be judged, and <see cref="Judge"/> says so.
/// </remarks>
/// <example><code source="ContactPage.cs" region="windows" /></example>
public sealed record BareContact : IHasWorkings
{
    private readonly StoredNumber coveredM2;

    /// <summary>Describes windows under a covered area.</summary>
    /// <param name="covered">Area covered by the tape.</param>
    /// <param name="windows">The windows under it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The windows are larger than the area covered.</exception>
    public BareContact(Area covered, ContactWindows windows)
    {
        ArgumentNullException.ThrowIfNull(windows);
        double m2 = AcceptedRange.Above(0, "m2").Check(UnitConversions.SquareMeters(covered), nameof(covered));
        double bare = windows.Count * windows.WindowM2;
        this.coveredM2 = new StoredNumber(WithAllowance.AtLeast(m2, bare)
            ? m2
            : throw AcceptedRange.AtLeast(bare, "m2").Noting("the windows").Refuse(m2, nameof(covered)));
        this.Windows = windows;
    }

    /// <summary>Area covered by the tape.</summary>
    public Area Covered => Area.FromSquareMeters(this.coveredM2.Bare);

    /// <summary>The windows under it.</summary>
    public ContactWindows Windows { get; }

    /// <summary>Bare steel per area covered, on the average.</summary>
    [BasisOf(typeof(BareContactFormulas), nameof(BareContactFormulas.Ratio))]
    public BareRatio Ratio => BareRatio.FromSquareCentimetersPerSquareMeter(this.Solve(default(NoSteps)));

    /// <summary>How many windows of this size a ratio takes.</summary>
    /// <param name="wanted">The ratio wanted.</param>
    /// <exception cref="OverflowException">It takes more than 2,147,483,647 windows.</exception>
    [BasisOf(typeof(BareContactFormulas), nameof(BareContactFormulas.WindowsNeeded))]
    public int WindowsNeeded(BareRatio wanted) => checked((int)BareContactKernel.WindowsNeeded(
        wanted.SquareCentimetersPerSquareMeter, this.coveredM2.Bare, this.Windows.WindowM2));

    /// <summary>Holds the contact against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        var ratio = new Measure(this.Solve(default(NoSteps)), TradeUnit.SquareCentimeterPerSquareMeter);
        if (rules[RuleIds.MinimumBareRatio].Judge(ratio, subject) is { } tooLittle)
        {
            yield return tooLittle;
        }

        yield return rules[RuleIds.WindowPositionsUnknown].State(subject);
        yield return rules[RuleIds.OldPaint].State(subject);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Bare contact over paint");
    }

    /// <summary>Windows and covered area in a few words.</summary>
    public override string ToString() => $"{this.Windows} under {MeasureText.Write(this.coveredM2.Bare, TradeUnit.SquareMeter, 6)}";

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        BareContactKernel.RatioCm2PerM2(this.Windows.Count, this.Windows.WindowM2, this.coveredM2.Bare, steps);
}
