using SacrificialTape.Contact;
using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
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
    /// <exception cref="ArgumentException">The tag is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range, the lay has more than 100 layers everywhere, or the contact windows are larger than
    /// the surface.
    /// </exception>
    public SurveyLine(
        string tag,
        ILay lay,
        ZincExposure exposure,
        Lifetime requiredLife,
        SteelCondition? steel = null,
        WeldWork? welds = null,
        int layersWanted = 1)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(tag);
        ArgumentNullException.ThrowIfNull(lay);
        ArgumentNullException.ThrowIfNull(exposure);
        if (!requiredLife.IsUnlimited)
        {
            AcceptedRange.Above(0, "a").Check(requiredLife.Years, nameof(requiredLife));
        }

        AcceptedRange.Between(1, 20, "layers").Check(layersWanted);
        AcceptedRange.Between(0, LifeEstimate.MostLayers, "layers everywhere").Check(lay.LayersEverywhere, nameof(lay));
        this.Tag = tag;
        this.Lay = lay;
        this.Exposure = exposure;
        this.RequiredLife = requiredLife;
        this.Steel = steel ?? SteelCondition.Bare;
        this.Welds = welds;
        this.LayersWanted = layersWanted;
        this.Contact = this.Steel.WindowsInPaint is { } windows ? new BareContact(lay.Surface.Area, windows) : null;
    }

    /// <summary>Its name on site.</summary>
    public string Tag { get; }

    /// <summary>The surface and the strips on it.</summary>
    public ILay Lay { get; }

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

    /// <summary>Bare contact, where paint stays under the tape.</summary>
    internal BareContact? Contact { get; }

    /// <summary>Tag and lay in a few words.</summary>
    public override string ToString() => $"{this.Tag}: {this.Lay.Description} on {this.Lay.Surface.Description}";
}
