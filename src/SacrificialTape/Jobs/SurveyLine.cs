using SacrificialTape.Contact;
using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Jobs;

/// <summary>One line of a survey: a surface and how it is to be covered, where it stands and how long it must last.</summary>
/// <remarks>Layers wanted: 1 to 20. Required life: more than zero, or unlimited.</remarks>
public sealed record SurveyLine
{
    /// <summary>Describes a line.</summary>
    /// <param name="tag">Its name on site, unique within a job.</param>
    /// <param name="lay">The surface and the strips on it.</param>
    /// <param name="exposure">Where it stands.</param>
    /// <param name="requiredLife">How long the zinc must last.</param>
    /// <param name="steel">What the survey found of the steel; left out: bare carbon steel, level.</param>
    /// <param name="welds">The weld seams; left out: none.</param>
    /// <param name="layersWanted">The least number of layers wanted over any spot.</param>
    /// <param name="spots">
    /// Spots that stay clear; left out: none. Bands all round a pipe belong to its lay: see <see cref="InterruptedLay"/>.
    /// </param>
    /// <param name="ends">Where tape ends beside steel; left out: no steel stays bare there.</param>
    /// <param name="paintOver">The paint that goes over the tape; left out: none.</param>
    /// <param name="windows">
    /// The contact windows at their places, where paint, tight scale or tight rust stays under the tape; left out: not known.
    /// </param>
    /// <param name="under">What lies between tape and steel, where windows are given.</param>
    /// <param name="laws">The loss laws that its life is worked out under; left out: those that go with the exposure, <see cref="LawsByMedium"/>.</param>
    /// <exception cref="ArgumentException">
    /// The tag is empty, a band stands among the spots, windows are given both by count and by place or lie on another surface, or there is no law.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range, the lay has more than 100 layers everywhere, the spots with their margins are not
    /// smaller than the surface, or the contact windows are larger than what is covered of it.
    /// </exception>
    public SurveyLine(
        string tag,
        ILay lay,
        ZincExposure exposure,
        Lifetime requiredLife,
        SteelCondition? steel = null,
        WeldWork? welds = null,
        int layersWanted = 1,
        IEnumerable<StayClear>? spots = null,
        IEnumerable<TapeEnd>? ends = null,
        PaintFilm? paintOver = null,
        WindowLayout? windows = null,
        UnderTape under = UnderTape.SoundPaint,
        IEnumerable<ILossLaw>? laws = null)
        : this(new LineNeeds(tag, exposure, requiredLife, steel, welds, layersWanted, spots?.Listed(), ends?.Listed(), paintOver, windows, under, laws?.Listed()), lay)
    {
    }

    /// <summary>Describes a line by its needs and its lay.</summary>
    /// <param name="needs">Where it stands, how long it must last, what was found of it.</param>
    /// <param name="lay">The surface and the strips on it.</param>
    /// <exception cref="ArgumentException">Windows lie on another surface than the lay.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The lay has more than 100 layers everywhere, the spots with their margins are not smaller than the surface, or the
    /// contact windows are larger than what is covered of it.
    /// </exception>
    public SurveyLine(LineNeeds needs, ILay lay)
    {
        ArgumentNullException.ThrowIfNull(needs);
        ArgumentNullException.ThrowIfNull(lay);
        AcceptedRange.Between(0, LifeEstimate.MostLayers, "layers everywhere").Check(lay.LayersEverywhere, nameof(lay));
        this.Needs = needs;
        this.Lay = lay;
        this.AreaM2 = UnitConversions.SquareMeters(lay.Surface.Area);
        this.SpotM2 = this.Spots.Sum(static spot => spot.SpotM2);
        if (this.SpotM2 > 0)
        {
            AcceptedRange.FromBelow(0, this.AreaM2, "m2").Noting("the area of " + lay.Surface.Description).Check(this.SpotM2, "spots");
        }

        this.LayStrips = this.Spots.Count == 0 ? lay.Strips : new ValueList<Strip>(lay.Strips.Select(strip => strip.CutOut(this.CutOutShare)));
        this.Contact = this.Steel.WindowsInPaint is { } windows ? new BareContact(UnitsNet.Area.FromSquareMeters(this.CoveredM2), windows) : null;
        this.ProvenContact = needs.Windows is { } layout ? new LayContact(lay, layout, needs.Under) : null;
    }

    /// <summary>Where it stands, how long it must last, what was found of it.</summary>
    public LineNeeds Needs { get; }

    /// <summary>The surface and the strips on it.</summary>
    public ILay Lay { get; }

    /// <inheritdoc cref="LineNeeds.Tag"/>
    public string Tag => this.Needs.Tag;

    /// <inheritdoc cref="LineNeeds.Exposure"/>
    public ZincExposure Exposure => this.Needs.Exposure;

    /// <inheritdoc cref="LineNeeds.RequiredLife"/>
    public Lifetime RequiredLife => this.Needs.RequiredLife;

    /// <inheritdoc cref="LineNeeds.Steel"/>
    public SteelCondition Steel => this.Needs.Steel;

    /// <inheritdoc cref="LineNeeds.Welds"/>
    public WeldWork? Welds => this.Needs.Welds;

    /// <inheritdoc cref="LineNeeds.LayersWanted"/>
    public int LayersWanted => this.Needs.LayersWanted;

    /// <inheritdoc cref="LineNeeds.Spots"/>
    public ValueList<StayClear> Spots => this.Needs.Spots;

    /// <inheritdoc cref="LineNeeds.Ends"/>
    public ValueList<TapeEnd> Ends => this.Needs.Ends;

    /// <inheritdoc cref="LineNeeds.PaintOver"/>
    public PaintFilm? PaintOver => this.Needs.PaintOver;

    /// <inheritdoc cref="LineNeeds.Windows"/>
    public WindowLayout? Windows => this.Needs.Windows;

    /// <inheritdoc cref="LineNeeds.Under"/>
    public UnderTape Under => this.Needs.Under;

    /// <inheritdoc cref="LineNeeds.Laws"/>
    public ValueList<ILossLaw>? Laws => this.Needs.Laws;

    /// <summary>All that stays clear: the bands of an interrupted pipe, then the spots.</summary>
    public ValueList<StayClear> AllStayClear => this.Lay is InterruptedLay interrupted
        ? new ValueList<StayClear>(interrupted.Pipe.Bands.Concat(this.Spots))
        : this.Spots;

    /// <summary>The strips of the lay; what is cut out over spots is trim.</summary>
    internal ValueList<Strip> LayStrips { get; }

    internal bool SteelStaysBareBeside => this.Ends.Any(static end => end.Feed is not null);

    internal double SpotM2 { get; }

    internal double CoveredM2 => this.AreaM2 - this.SpotM2;

    [BasisOf(typeof(StayClearFormulas), nameof(StayClearFormulas.SpotShare))]
    internal double CutOutShare => this.SpotM2 / this.AreaM2;

    /// <summary>Bare contact, where paint stays under the tape.</summary>
    internal BareContact? Contact { get; }

    /// <summary>Contact by places of windows and strips, where those of the windows are known.</summary>
    internal LayContact? ProvenContact { get; }

    private double AreaM2 { get; }

    /// <summary>Tag and lay in a few words.</summary>
    public override string ToString() => $"{this.Tag}: {this.Lay.Description} on {this.Lay.Surface.Description}";
}
