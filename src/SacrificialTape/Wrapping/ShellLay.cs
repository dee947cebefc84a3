using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Strips on the shell of a tank or vessel: courses round it or strips along its axis, their laps made equal.</summary>
/// <remarks>
/// <para>Courses: n = ceil((H - o)/(w - o)) over the shell and the laps past both seams, H = h + 2 e, each the circumference
/// and its end lap; one longer than the roll is spliced. Strips along: n = ceil(C/(w - o)), each H long. Without a lap
/// past the seams and without openings this is what <see cref="RingLay"/> and <see cref="AlongPipeLay"/> give.</para>
/// <para>Openings have no place: they are laid over and cut out, and of each strip that trim is the average. What lies past
/// a seam is lap.</para>
/// </remarks>
public sealed record ShellLay : ILay, IPlacedStrips
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber pastMm;
    private readonly StoredNumber lapMm;

    /// <summary>Lays strips on a shell.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="direction">How the strips run.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="lapPastSeams">
    /// How far the tape reaches past the seam at each end, to lap on the tape of the heads; zero to the strip's width. Left
    /// out: zero, the tape ends at the seams.
    /// </param>
    /// <param name="choices">End lap, wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">A lap is outside its range, or takes over 100 million strips; or the direction is not known.</exception>
    public ShellLay(
        Shell shell, StripStock stock, ShellDirection direction, Length leastLap, Length? lapPastSeams = null, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(stock);
        this.Shell = shell;
        this.Stock = stock;
        this.Direction = Enum.IsDefined(direction)
            ? direction
            : throw new ArgumentOutOfRangeException(nameof(direction), direction, "Not a direction known here.");
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        this.pastMm = new StoredNumber(AcceptedRange.Between(0, stock.WidthMm, "mm").Noting("at most the strip's width")
            .Check(UnitConversions.Millimeters(lapPastSeams ?? Length.Zero), nameof(lapPastSeams)));
        ParallelCut cut = this.Cut(default(NoSteps));
        this.SideBySide = cut.SideBySide;
        this.lapMm = new StoredNumber(cut.LapMm);
        this.LayersEverywhere = cut.LayersEverywhere;
        this.Strips = [cut.Strip];
    }

    /// <summary>The shell.</summary>
    public Shell Shell { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>How the strips run.</summary>
    public ShellDirection Direction { get; }

    /// <summary>End lap, wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>How far the tape reaches past the seam at each end.</summary>
    public Length LapPastSeams => Length.FromMillimeters(this.pastMm.Bare);

    /// <summary>Courses, or strips round the shell, in one pass.</summary>
    public int SideBySide { get; }

    /// <summary>The lap that the strips really get; zero for a single course.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.ClosedLap))]
    public Length Lap => Length.FromMillimeters(this.lapMm.Bare);

    Surface ILay.Surface => this.Shell;

    /// <inheritdoc/>
    public StripCourse Course => this.Round ? StripCourse.RoundWithEndLap : StripCourse.Along;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <summary>Tape area over the area of the shell, what lies past the seams included.</summary>
    [BasisOf(typeof(ShellLayFormulas), nameof(ShellLayFormulas.CutOut))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Shell);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.SideBySide} {(this.Round ? "course(s) round the shell" : "strip(s) along the shell")}, lap {this.lapMm.Bare:0.#} mm, {this.pastMm.Bare:0.#} mm past each seam, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"{(this.Round ? this.OfCourses : this.OfStrips)} {this.PastSeams}{(this.Shell.Openings.Count == 0 ? string.Empty : "Lay over openings, cut them out to the neck or pad and press the rim down. ")}Press each down as it goes on, from its middle outward.{this.Choices.Repeated}");

    private bool Round => this.Direction == ShellDirection.Round;

    private string OfCourses => string.Create(
        CultureInfo.InvariantCulture,
        $"Snap lines round the shell, {this.Stock.WidthMm - this.lapMm.Bare:0.0} mm apart, and lay {this.SideBySide} course(s) to them{(this.Shell.Axis == ShellAxis.Upright ? ", the lowest first" : string.Empty)} (lap {this.lapMm.Bare:0.0} mm), each lapped {this.Choices.EndLapMm:0.#} mm on itself. Step end laps and splices from course to course{(this.Shell.Axis == ShellAxis.Upright ? ", their free ends away from the weather, so that water runs off each lap and the last edge faces down." : ", on the sides of the shell, their free ends facing down.")}");

    private string OfStrips => string.Create(
        CultureInfo.InvariantCulture,
        $"Snap lines along the shell, {this.Stock.WidthMm - this.lapMm.Bare:0.0} mm apart round it, and lay {this.SideBySide} strip(s) to them (lap {this.lapMm.Bare:0.0} mm). {(this.Shell.Axis == ShellAxis.Upright ? "Their lap joints stand up and shed water sideways: begin on the lee side and end there." : "Begin at the lowest line and work up on both sides to the top, so that each lap sheds water and the free edges face down.")}");

    private string PastSeams => this.pastMm.Bare > 0
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"At both ends reach {this.pastMm.Bare:0.#} mm past the seam{(this.Shell.Axis == ShellAxis.Upright ? ": over the tape of a bottom, but under that of a top, which is laid after the shell. " : ", over the tape of the heads. ")}")
        : "End at the seams of the heads. ";

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.SideBySide > 1 && rules[RuleIds.MinimumLap].Judge(Measure.Of(this.Lap), subject) is { } lap)
        {
            yield return lap;
        }

        if (this.Round && rules[RuleIds.MinimumEndLap].Judge(Measure.Of(this.Choices.EndLap), subject) is { } endLap)
        {
            yield return endLap;
        }

        if (this.Shell.Openings.Count > 0)
        {
            yield return rules[RuleIds.OpeningsWithoutPlace].State(subject);
        }
    }

    /// <inheritdoc/>
    public ValueList<PlacedStrip> PlaceStrips()
    {
        double spacing = this.Stock.WidthMm - this.lapMm.Bare;
        double length = this.Strips[0].LengthUm / 1e3;
        return this.Round
            ? StripPlacing.Rings(this.Choices.Passes, this.SideBySide, -this.pastMm.Bare, spacing, this.Stock.WidthMm, length)
            : StripPlacing.Alongside(this.Choices.Passes, this.SideBySide, -this.pastMm.Bare, length, spacing, this.Stock.WidthMm);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Cut(steps);
        return steps.Under($"{(this.Round ? "Courses round" : "Strips along")} {this.Shell.Description}");
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private ParallelCut Cut<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double height = UnitConversions.Millimeters(this.Shell.Length);
        double kept = ShellLayKernel.KeptShare(
            UnitConversions.SquareMeters(this.Shell.Area), UnitConversions.SquareMeters(this.Shell.GrossArea), steps);
        double span = ShellLayKernel.SpanMm(height, this.pastMm.Bare, steps);
        double circumference = PipeKernel.CircumferenceMm(UnitConversions.Millimeters(this.Shell.OutsideDiameter), steps);
        return this.Round
            ? this.CutCourses(height, span, circumference, kept, steps)
            : this.CutAlong(height, span, circumference, kept, steps);
    }

    private ParallelCut CutCourses<TSteps>(double height, double span, double circumference, double kept, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double count = SpanKernel.OpenCount(span, width, this.askedLapMm.Bare, steps);
        double ring = SpanKernel.RingLengthMm(circumference, this.Choices.EndLapMm, steps);
        int courses = StripCount.Whole(count, width, this.askedLapMm.Bare);
        double lap = 0;
        double layers = this.Choices.Passes; // a single course has no neighbour to wander from
        double over;
        double standsOver = 0;
        if (courses > 1)
        {
            lap = SpanKernel.OpenLapMm(count, width, span, steps);
            layers = SpanKernel.OpenLayers(this.Choices.Passes, width, this.Choices.WanderMm, width - lap, steps);
            double past = ShellLayKernel.PastSeamMm(count, this.pastMm.Bare, width - lap, steps);
            over = ShellLayKernel.OverCourseMm2(ring, count, width, past, steps);
        }
        else
        {
            over = ShellLayKernel.OverAloneMm2(ring, height, steps);
            standsOver = circumference * (1 - (span / width)); // cut off along its whole length
        }

        double trim = standsOver + ShellLayKernel.CutOutMm(kept, over, width, steps);
        double cover = kept * circumference * height / (count * width);
        bool spliced = WithAllowance.Above(ring, UnitConversions.Millimeters(this.Stock.RollLength));
        return new(courses, lap, (int)layers, Strip.Computed(this.Stock, ring, courses * this.Choices.Passes, StripPurpose.Ring, spliced, cover, trim));
    }

    private ParallelCut CutAlong<TSteps>(double height, double span, double circumference, double kept, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = this.Stock.WidthMm;
        double count = SpanKernel.ClosedCount(circumference, width, this.askedLapMm.Bare, steps);
        double lap = SpanKernel.ClosedLapMm(width, circumference, count, steps);
        double layers = SpanKernel.ClosedLayers(this.Choices.Passes, width, this.Choices.WanderMm, circumference, count, steps);
        int round = StripCount.Whole(count, width, this.askedLapMm.Bare);
        double trim = ShellLayKernel.CutOutMm(kept, ShellLayKernel.OverAlongMm2(height, width, steps), width, steps);
        double cover = kept * circumference * height / (count * width);
        return new(
            round,
            lap,
            StripCount.Layers(layers, this.askedLapMm.Bare),
            Strip.Computed(this.Stock, span, round * this.Choices.Passes, StripPurpose.Other, true, cover, trim));
    }
}
