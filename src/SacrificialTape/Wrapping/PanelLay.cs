using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Parallel strips on a flat panel, their laps made equal.</summary>
/// <remarks>
/// <para>Strips: n = ceil((W - o)/(w - o)) across the panel; lap (n w - W)/(n - 1), never less than asked. On a rectangle
/// all are as long as the panel; on a disc or a ring each is as long as its longest chord within its own band.</para>
/// <para>A strip that lies wholly within the width of an opening with a place, or of the hole of a ring, is interrupted
/// there. All others, and all over openings without a place, run through and are cut out: that tape is trim. Of pieces of
/// one length, cover and trim are the mean; the parts of an interrupted strip share them by length.</para>
/// <para>At the edges lies one strip only, so that one pass is one layer everywhere.</para>
/// </remarks>
public sealed record PanelLay : ILay, IPlacedStrips
{
    private readonly StoredNumber askedLapMm;
    private readonly StoredNumber lapMm;

    /// <summary>Lays strips on a panel.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="direction">How the strips run.</param>
    /// <param name="leastLap">The least lap between neighbours; zero or more, less than the strip is wide.</param>
    /// <param name="choices">Wander, passes, method; left out: those of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lap is not less than the strip is wide, or negative, or takes over 100 million strips, or over 100 000 of unlike
    /// length; or the direction is not known.
    /// </exception>
    public PanelLay(Panel panel, StripStock stock, PanelDirection direction, Length leastLap, LayChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(stock);
        this.Panel = panel;
        this.Stock = stock;
        this.Direction = Enum.IsDefined(direction)
            ? direction
            : throw new ArgumentOutOfRangeException(nameof(direction), direction, "Not a direction known here.");
        this.Choices = choices ?? LayChoices.Default;
        this.askedLapMm = new StoredNumber(AcceptedLap.Mm(stock, leastLap, nameof(leastLap)));
        FaceCut cut = this.Cut(default(NoSteps));
        this.SideBySide = cut.SideBySide;
        this.lapMm = new StoredNumber(cut.LapMm);
        this.LayersEverywhere = cut.LayersEverywhere;
        this.Strips = cut.Strips;
    }

    /// <summary>The panel.</summary>
    public Panel Panel { get; }

    /// <inheritdoc/>
    public StripStock Stock { get; }

    /// <summary>How the strips run.</summary>
    public PanelDirection Direction { get; }

    /// <summary>Wander, passes and method.</summary>
    public LayChoices Choices { get; }

    /// <summary>The lap that was asked for.</summary>
    public Length LeastLap => Length.FromMillimeters(this.askedLapMm.Bare);

    /// <summary>Strips side by side in one pass, interrupted or not.</summary>
    public int SideBySide { get; }

    /// <summary>The lap that the strips really get; zero for a single strip.</summary>
    [BasisOf(typeof(SpanFormulas), nameof(SpanFormulas.OpenLap))]
    public Length Lap => Length.FromMillimeters(this.lapMm.Bare);

    /// <summary>Pieces to cut, all passes.</summary>
    public int Pieces => this.Strips.Sum(static strip => strip.Count);

    /// <summary>Length of all pieces.</summary>
    public Length StripLength => Length.FromMillimeters(this.Strips.Sum(static strip => strip.Count * (strip.LengthUm / 1e3)));

    /// <summary>The fewest splices of pieces that are longer than their roll.</summary>
    [BasisOf(typeof(FaceFormulas), nameof(FaceFormulas.Splices))]
    public int Splices => (int)this.SplicesOf(default(NoSteps));

    Surface ILay.Surface => this.Panel;

    /// <inheritdoc/>
    public StripCourse Course => StripCourse.OnFace;

    /// <inheritdoc/>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public int LayersEverywhere { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(FaceFormulas), nameof(FaceFormulas.Average))]
    public AreaRatio LayersOnAverage => this.Strips.OnAverage(this.Panel);

    /// <inheritdoc/>
    public string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.SideBySide} strip(s) along the {this.Way}, lap {this.lapMm.Bare:0.#} mm, {this.Pieces} piece(s), {this.Choices.Passes} pass(es)");

    /// <inheritdoc/>
    public string Instruction => string.Create(
        CultureInfo.InvariantCulture,
        $"Snap lines along the {this.Way}, {this.Stock.WidthMm - this.lapMm.Bare:0.0} mm apart, from one edge of the panel. Lay {this.SideBySide} strip(s) to them (lap {this.lapMm.Bare:0.0} mm) and trim them at the edge. {this.Order} {this.AtOpenings}Press the edges down first with an edge roller.{this.Choices.Repeated}");

    private string Way => this.Direction == PanelDirection.AlongWidth ? "width" : "height";

    private string Order => this.Direction == PanelDirection.AlongWidth
        ? "On upright or sloping steel begin at the bottom and work up, so that each lap sheds water and the last edge faces down."
        : "On upright steel the lap joints of these strips stand up and shed water sideways: begin on the lee side, so that the last edges face away from the weather.";

    private string AtOpenings => this.Panel.Openings.Count == 0 && this.Panel is not AnnularPanel
        ? string.Empty
        : "End strips that lie wholly within an opening's width at its rim; lay the others over it, cut them out and press the rim down. ";

    /// <summary>Lays the panel both ways and says which is better.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap between neighbours.</param>
    /// <param name="choices">Wander, passes, method; left out: those of the default rule set.</param>
    public static PanelLayComparison BothWays(Panel panel, StripStock stock, Length leastLap, LayChoices? choices = null) => new(
        new PanelLay(panel, stock, PanelDirection.AlongWidth, leastLap, choices),
        new PanelLay(panel, stock, PanelDirection.AlongHeight, leastLap, choices));

    /// <summary>Where each piece of one pass lies, strip by strip.</summary>
    internal IEnumerable<StripPlace> Places() =>
        from band in FaceKernel.Bands(Face.Of(this.Panel, this.Direction), this.SideBySide, this.Stock.WidthMm, this.lapMm.Bare)
        from piece in band.Pieces
        select new StripPlace(piece.From, piece.To, band.LowMm);

    /// <summary>Every piece of every pass, from the left and from the bottom of the panel or of the square round it.</summary>
    public ValueList<PlacedStrip> PlaceStrips()
    {
        Face face = Face.Of(this.Panel, this.Direction);
        double alongMiddle = face.Outline.AlongMm / 2;
        double acrossMiddle = face.Outline.AcrossMm / 2;
        bool alongWidth = this.Direction == PanelDirection.AlongWidth;
        return StripPlacing.EachPass(this.Choices.Passes,
        [
            .. from band in FaceKernel.Bands(face, this.SideBySide, this.Stock.WidthMm, this.lapMm.Bare)
               from piece in band.Pieces
               let begin = piece.From + alongMiddle
               let length = piece.To - piece.From
               let low = band.LowMm + acrossMiddle
               let width = band.HighMm - band.LowMm
               select alongWidth
                   ? new StripPlacing.Band(begin, length, low, width, false)
                   : new StripPlacing.Band(low, width, begin, length, true),
        ]);
    }

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.SideBySide > 1 && rules[RuleIds.MinimumLap].Judge(Measure.Of(this.Lap), subject) is { } lap)
        {
            yield return lap;
        }

        if (this.Panel.Openings.Any(static opening => !opening.IsPlaced))
        {
            yield return rules[RuleIds.OpeningsWithoutPlace].State(subject);
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Cut(steps);
        _ = this.SplicesOf(steps);
        return steps.Under($"Strips along the {this.Way} of {this.Panel.Description}");
    }

    /// <summary>The description.</summary>
    public override string ToString() => this.Description;

    private FaceCut Cut<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        FaceKernel.Cut(Face.Of(this.Panel, this.Direction), this.Stock, this.askedLapMm.Bare, this.Choices, steps);

    private double SplicesOf<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double splices = 0;
        foreach (Strip strip in this.Strips)
        {
            splices += FaceKernel.Splices(strip.Count, strip.LengthUm / 1e3, UnitConversions.Millimeters(this.Stock.RollLength), steps);
        }

        return splices;
    }
}
