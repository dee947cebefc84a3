using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Strips along a structural section, folded over its arrises and pressed into its fillets.</summary>
/// <remarks>
/// <para>The edge of a strip never lies on a fold: it keeps a clearance from every arris, round corner and fillet, which
/// is the lap that was asked for unless stated, so that a strip which turns a fold goes on by at least that much. A face
/// narrower than two clearances, as the edge of a flange, is passed over whole. A strip whose edge would come to lie on a fold is laid
/// farther back, or trimmed where that does not help either.</para>
/// <para>Round the outline, the strips are as few as any placing by these rules can do with. Face by face takes more, but
/// puts two strips over every fold, where paint is thinnest and rust begins.</para>
/// <para>Places count along the outline from the beginning of its first face; which that is, the section says.</para>
/// </remarks>
public sealed record SectionLay : ILay, IFolds
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber clearanceMm;
    private readonly StoredNumber leastLapMm;
    private readonly StoredNumber trimmedMm;

    /// <summary>Lays strips along a section.</summary>
    /// <param name="section">The section; a circular one is laid as a pipe: see <see cref="CircularHollowSection.Outside"/>.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="pattern">How strips are shared out over the faces.</param>
    /// <param name="foldClearance">How far edges of strips keep away from folds, at most half the widest face; left out: the least lap.</param>
    /// <param name="choices">Wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentException">The section is circular.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lap is negative or not less than the strip is wide; the clearance is more than the widest face has room for; the
    /// strip is too narrow to get past a fold; or over 100 000 strips lie side by side.
    /// </exception>
    public SectionLay(
        Section section,
        StripStock stock,
        Length leastLap,
        SectionPattern pattern = SectionPattern.RoundOutline,
        Length? foldClearance = null,
        LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(stock);
        SectionOutline outline = section.Outline(default(NoSteps))
            ?? throw new ArgumentException("A circular section has no faces to lay strips on: lay its Outside as a pipe.", nameof(section));
        this.Section = section;
        this.Stock = stock;
        this.Pattern = Enum.IsDefined(pattern) ? pattern : throw new ArgumentOutOfRangeException(nameof(pattern), pattern, "Not a pattern known here.");
        this.Choices = choices ?? LayChoices.Default;
        double lap = AcceptedLap.Mm(stock, leastLap, nameof(leastLap));
        this.askedLapMm = new StoredNumber(lap);
        double clearance = AcceptedRange.AtLeast(0, "mm")
            .Check(foldClearance is { } stated ? UnitConversions.Millimeters(stated) : lap, nameof(foldClearance));
        this.clearanceMm = new StoredNumber(clearance);
        LapZones zones = LapZones.Of(outline, clearance);
        if (zones.Count == 0)
        {
            throw AcceptedRange.Between(0, SectionPlaces.WidestFaceMm(outline) / 2, "mm")
                .Noting("edges of strips lie on a face, clear of the folds at both its ends")
                .Refuse(clearance, foldClearance is null ? nameof(leastLap) : nameof(foldClearance));
        }

        List<(double Start, double End)> round = SectionChain.Round(zones, stock.WidthMm, lap)
            ?? throw AcceptedRange.AtLeast(SectionPlaces.LeastWidthMm(zones, lap), "mm")
                .Noting("a narrower strip does not get past the folds with this lap and clearance").Refuse(stock.WidthMm, nameof(stock));
        List<(double Start, double End)> chain = this.Pattern == SectionPattern.RoundOutline
            ? round
            : SectionChain.FaceByFace(zones, stock.WidthMm, lap)!;
        if (chain.Count > SectionChain.Most)
        {
            throw new ArgumentOutOfRangeException(nameof(leastLap), string.Create(
                CultureInfo.InvariantCulture,
                $"A lap of {lap:0.######} mm on a strip {stock.WidthMm:0.######} mm wide takes more than the {SectionChain.Most} strips that are counted: the lap must be smaller."));
        }

        Solution solved = this.Solve(default(NoSteps), chain);
        this.StripsRoundOutline = round.Count;
        this.leastLapMm = new StoredNumber(solved.LapsMm.Min());
        this.LayersEverywhere = (int)solved.Layers;
        this.Layout = SectionPlaces.Layout(outline, chain, solved.LapsMm, stock.WidthMm);
        this.trimmedMm = new StoredNumber(this.Layout.Sum(static strip => strip.TrimMm));
        this.Strips = SectionPlaces.Strips(stock, chain, this.Layout, section, this.Choices.Passes);
    }

    /// <summary>The section.</summary>
    public Section Section { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>How strips are shared out over the faces.</summary>
    public SectionPattern Pattern { get; }

    /// <summary>Wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>How far edges of strips keep away from folds.</summary>
    public Length FoldClearance => Length.FromMillimeters(this.clearanceMm.Bare);

    /// <summary>The least lap that any two neighbours get.</summary>
    [BasisOf(typeof(SectionLayFormulas), nameof(SectionLayFormulas.Lap))]
    public Length SmallestLap => Length.FromMillimeters(this.leastLapMm.Bare);

    /// <summary>Strips side by side in one pass.</summary>
    public int StripsSideBySide => this.Layout.Count;

    /// <summary>Strips side by side that the pattern round the outline takes; no other takes fewer.</summary>
    public int StripsRoundOutline { get; }

    /// <summary>Where each strip lies and where it is folded, in the order along the outline.</summary>
    public ValueList<SectionStrip> Layout { get; }

    /// <summary>The smallest radius that a strip is folded over or pressed into; zero where the section is described as sharp.</summary>
    public Length SmallestFoldRadius => Length.FromMillimeters(this.Section.Folds.Min(static fold => fold.RadiusMm));

    Surface ILay.Surface => this.Section;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.Along;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SectionLayFormulas), nameof(SectionLayFormulas.OnAverage))]
    public AreaRatio LayersOnAverage => AreaRatio.FromRatio(this.OnAverage(this.Section.PerimeterMm(default(NoSteps)), default(NoSteps)));

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.StripsSideBySide} strip(s) along the section {(this.Pattern == SectionPattern.RoundOutline ? "round its outline" : "face by face")}, lap at least {this.leastLapMm.Bare:0.#} mm, {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Mark and pre-fold {this.StripsSideBySide} strip(s) along the section as the list of strips says, and lay each along its mark. Break sharp arrises with a file first. Begin with the strips that face down and end with those on top, so that each lap sheds water and its edge faces down. Press fillets first with a rounded tool, then the faces beside them, then fold over the arrises with an edge roller. No edge may lie on an arris or in a fillet: keep {this.clearanceMm.Bare:0.#} mm away.{this.Choices.Repeated}");

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (rules[RuleIds.MinimumLap].Judge(Measure.Of(this.SmallestLap), subject) is { } lap)
        {
            yield return lap;
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        double lap = this.askedLapMm.Bare;
        SectionOutline outline = this.Section.Outline(steps)!;
        double perimeter = this.Section.PerimeterMm(steps);
        LapZones zones = LapZones.Of(outline, this.clearanceMm.Bare);
        _ = SectionLayKernel.LeastCount(perimeter, this.Stock.WidthMm, lap, steps);
        _ = this.Solve(steps, this.Pattern == SectionPattern.RoundOutline
            ? SectionChain.Round(zones, this.Stock.WidthMm, lap)!
            : SectionChain.FaceByFace(zones, this.Stock.WidthMm, lap)!);
        _ = this.OnAverage(perimeter, steps);
        return steps.Under("Strips along " + this.Section.Description);
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private Solution Solve<TSteps>(TSteps steps, List<(double Start, double End)> chain)
        where TSteps : struct, IStepRecorder
    {
        double perimeter = this.Section.PerimeterMm(default(NoSteps));
        double width = this.Stock.WidthMm;
        return new(
            SectionLayKernel.LapsMm(chain, width, perimeter, steps),
            SectionLayKernel.Layers(this.Choices.Passes, chain, width, perimeter, this.Choices.WanderMm, steps));
    }

    private double OnAverage<TSteps>(double perimeterMm, TSteps steps)
        where TSteps : struct, IStepRecorder => SectionLayKernel.OnAverage(
        this.Choices.Passes, this.Layout.Count, this.Stock.WidthMm, this.trimmedMm.Bare, perimeterMm, steps);

    private readonly record struct Solution(double[] LapsMm, double Layers);
}
