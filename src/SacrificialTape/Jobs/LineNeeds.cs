using SacrificialTape.Contact;
using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Jobs;

/// <summary>A survey line before its lay is chosen: where it stands, how long it must last, what was found of it.</summary>
/// <remarks>Layers wanted: 1 to 20. Required life: more than zero, or unlimited.</remarks>
public sealed record LineNeeds
{
    /// <summary>Describes the needs of a line.</summary>
    /// <param name="tag">Its name on site.</param>
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
    /// <exception cref="ArgumentException">The tag is empty, a band stands among the spots, windows are given both by count and by place, or there is no law.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LineNeeds(
        string tag,
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
    {
        ValueList<ILossLaw>? allLaws = laws?.Listed();
        ArgumentException.ThrowIfNullOrWhiteSpace(tag);
        ArgumentNullException.ThrowIfNull(exposure);
        if (!requiredLife.IsUnlimited)
        {
            AcceptedRange.Above(0, "a").Check(requiredLife.Years, nameof(requiredLife));
        }

        AcceptedRange.Between(1, 20, "layers").Check(layersWanted);
        this.Tag = tag;
        this.Exposure = exposure;
        this.RequiredLife = requiredLife;
        this.Steel = steel ?? SteelCondition.Bare;
        this.Welds = welds;
        this.LayersWanted = layersWanted;
        this.Spots = spots?.Listed() ?? ValueList<StayClear>.Empty;
        this.Ends = ends?.Listed() ?? ValueList<TapeEnd>.Empty;
        this.PaintOver = paintOver;
        this.Windows = windows;
        this.Laws = allLaws;
        this.Under = Enum.IsDefined(under) ? under : throw new ArgumentOutOfRangeException(nameof(under), under, "Not known here.");
        if (windows is not null && this.Steel.WindowsInPaint is not null)
        {
            throw new ArgumentException($"The windows of {tag} are given by count and by place: give the places only.", nameof(windows));
        }

        if (allLaws is { Count: 0 })
        {
            throw new ArgumentException($"The life of {tag} needs at least one loss law; leave the laws out for those that go with its exposure.", nameof(laws));
        }

        if (this.Spots.FirstOrDefault(static one => one.IsBand) is { } band)
        {
            throw new ArgumentException(
                $"A band parts the pipe: give it to an InterruptedPipe and lay that with an InterruptedLay, here only spots: {band}.", nameof(spots));
        }
    }

    /// <summary>Its name on site.</summary>
    public string Tag { get; }

    /// <summary>Where it stands.</summary>
    public ZincExposure Exposure { get; }

    /// <summary>How long the zinc must last.</summary>
    public Lifetime RequiredLife { get; }

    /// <summary>What the survey found of the steel.</summary>
    public SteelCondition Steel { get; }

    /// <summary>The weld seams, if any.</summary>
    public WeldWork? Welds { get; }

    /// <summary>The least number of layers wanted over any spot.</summary>
    public int LayersWanted { get; }

    /// <summary>Spots that stay clear.</summary>
    public ValueList<StayClear> Spots { get; }

    /// <summary>Where tape ends beside steel.</summary>
    public ValueList<TapeEnd> Ends { get; }

    /// <summary>The paint that goes over the tape, if any.</summary>
    public PaintFilm? PaintOver { get; }

    /// <summary>The contact windows at their places, if known.</summary>
    public WindowLayout? Windows { get; }

    /// <summary>What lies between tape and steel, where windows are given.</summary>
    public UnderTape Under { get; }

    /// <summary>The loss laws that its life is worked out under; null: those that go with the exposure, <see cref="LawsByMedium"/>.</summary>
    public ValueList<ILossLaw>? Laws { get; }

    /// <summary>The line with a lay.</summary>
    /// <param name="lay">The lay.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lay has too many layers, or spots or windows do not fit the surface.</exception>
    public SurveyLine With(ILay lay) => new(this, lay);

    /// <summary>Tag and required life in a few words.</summary>
    public override string ToString() => $"{this.Tag}: {this.RequiredLife} in {this.Exposure.Name}";
}
