using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>One flange of a joint: its rim, its back and its front outside the raised face, whichever are covered.</summary>
/// <remarks>
/// <para>Outside diameter: 1 mm to 100 m. Rim thickness: more than 0, at most 1 m. Hub and raised face are narrower than
/// the flange. The bolt holes, at most 1000, fit between them and the rim; their number and diameter may both be zero.</para>
/// <para>Bolt holes are taken off whole: bolts, nuts and washers are steel of their own. Tape on a gasket seat spoils
/// the joint, and a joint under pressure is not opened for taping: work on flanges belongs to those licensed for it.</para>
/// </remarks>
public sealed record Flange : Surface
{
    private const FlangeParts EveryPart = FlangeParts.Rim | FlangeParts.Back | FlangeParts.Front;
    private const int MostHoles = 1000;

    private readonly StoredNumber outsideMm;
    private readonly StoredNumber rimMm;
    private readonly StoredNumber hubMm;
    private readonly StoredNumber faceMm;
    private readonly StoredNumber boltHoleMm;

    /// <summary>Describes a flange by what was measured.</summary>
    /// <param name="outsideDiameter">Outside diameter.</param>
    /// <param name="rimThickness">Thickness at the rim, without the raised face.</param>
    /// <param name="hubDiameter">Where the back begins: diameter of the hub there, or of the pipe if there is no hub.</param>
    /// <param name="raisedFaceDiameter">Diameter of the raised face; on a flat face, of the gasket's seat.</param>
    /// <param name="boltHoles">Number of bolt holes, 0 to 1000.</param>
    /// <param name="boltHoleDiameter">Diameter of a bolt hole; zero if there is none.</param>
    /// <param name="parts">What is covered.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Flange(
        Length outsideDiameter,
        Length rimThickness,
        Length hubDiameter,
        Length raisedFaceDiameter,
        int boltHoles,
        Length boltHoleDiameter,
        FlangeParts parts)
        : this(outsideDiameter, rimThickness, hubDiameter, raisedFaceDiameter, boltHoles, boltHoleDiameter, parts, null)
    {
    }

    /// <summary>Describes a flange by a table of sizes.</summary>
    /// <param name="size">The dimensions by the table.</param>
    /// <param name="hubDiameter">Where the back begins: diameter of the hub there, or of the pipe if there is no hub.</param>
    /// <param name="parts">What is covered.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Flange(FlangeSize size, Length hubDiameter, FlangeParts parts)
        : this(
            (size ?? throw new ArgumentNullException(nameof(size))).OutsideDiameter,
            size.RimThickness,
            hubDiameter,
            size.RaisedFaceDiameter,
            size.BoltHoles,
            size.BoltHoleDiameter,
            parts,
            size)
    {
    }

    private Flange(
        Length outsideDiameter,
        Length rimThickness,
        Length hubDiameter,
        Length raisedFaceDiameter,
        int boltHoles,
        Length boltHoleDiameter,
        FlangeParts parts,
        FlangeSize? size)
    {
        double outside = FittingRanges.DiameterMm(outsideDiameter, nameof(outsideDiameter));
        double hub = Narrower(hubDiameter, outside, nameof(hubDiameter));
        double face = Narrower(raisedFaceDiameter, outside, nameof(raisedFaceDiameter));
        if (boltHoles is < 0 or > MostHoles)
        {
            throw new ArgumentOutOfRangeException(
                nameof(boltHoles), string.Create(CultureInfo.InvariantCulture, $"{boltHoles} is outside the accepted range: at least 0 and at most {MostHoles}."));
        }

        // A hole lies between the rim and the wider of hub and face; all of them together have room round that ring.
        double room = (outside - Math.Max(hub, face)) / 2;
        double between = boltHoles == 0 ? 0 : Math.Min(room, Math.PI * (outside - room) / boltHoles);
        this.boltHoleMm = new StoredNumber(
            FittingRanges.Within(UnitConversions.Millimeters(boltHoleDiameter), 0, between, nameof(boltHoleDiameter)));
        this.outsideMm = new StoredNumber(outside);
        this.rimMm = new StoredNumber(FittingRanges.ThicknessMm(rimThickness, nameof(rimThickness)));
        this.hubMm = new StoredNumber(hub);
        this.faceMm = new StoredNumber(face);
        this.BoltHoles = boltHoles;
        this.Parts = parts is > FlangeParts.None and <= EveryPart
            ? parts
            : throw new ArgumentOutOfRangeException(nameof(parts), parts, "State at least one of Rim, Back and Front, and nothing else.");
        this.Size = size;
    }

    /// <summary>Outside diameter.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.OutsideMm);

    /// <summary>Thickness at the rim, without the raised face: the width of a strip that just covers the rim.</summary>
    public Length RimThickness => Length.FromMillimeters(this.RimMm);

    /// <summary>Diameter where the back begins.</summary>
    public Length HubDiameter => Length.FromMillimeters(this.HubMm);

    /// <summary>Diameter of the raised face, which is left bare.</summary>
    public Length RaisedFaceDiameter => Length.FromMillimeters(this.FaceMm);

    /// <summary>Number of bolt holes.</summary>
    public int BoltHoles { get; }

    /// <summary>Diameter of a bolt hole.</summary>
    public Length BoltHoleDiameter => Length.FromMillimeters(this.BoltHoleMm);

    /// <summary>What is covered.</summary>
    public FlangeParts Parts { get; }

    /// <summary>The size that the dimensions were taken from, with what they rest on; null when they were given.</summary>
    public FlangeSize? Size { get; }

    /// <summary>Area of the rim, whether it is covered or not.</summary>
    [BasisOf(typeof(FlangeFormulas), nameof(FlangeFormulas.Rim))]
    public Area RimArea => Area.FromSquareMeters(FlangeKernel.Rim(this, default(NoSteps)));

    /// <summary>Area of the back less its bolt holes, whether it is covered or not.</summary>
    [BasisOf(typeof(FlangeFormulas), nameof(FlangeFormulas.Back))]
    public Area BackArea => Area.FromSquareMeters(FlangeKernel.Ring(this, this.HubMm, FlangeFormulas.Back, default(NoSteps)));

    /// <summary>Area of the front outside the raised face less its bolt holes, whether it is covered or not.</summary>
    [BasisOf(typeof(FlangeFormulas), nameof(FlangeFormulas.Front))]
    public Area FrontArea => Area.FromSquareMeters(FlangeKernel.Ring(this, this.FaceMm, FlangeFormulas.Front, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(FlangeFormulas), nameof(FlangeFormulas.Area))]
    public override Area Area => Area.FromSquareMeters(FlangeKernel.SquareMeters(this, default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"flange {this.OutsideMm:0.##} mm, {this.RimMm:0.##} mm thick at the rim, {this.BoltHoles} holes of {this.BoltHoleMm:0.##} mm: {this.Parts}");

    internal double OutsideMm => this.outsideMm.Bare;

    internal double RimMm => this.rimMm.Bare;

    internal double HubMm => this.hubMm.Bare;

    internal double FaceMm => this.faceMm.Bare;

    internal double BoltHoleMm => this.boltHoleMm.Bare;

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Size?.RimMm(steps);
        _ = FlangeKernel.SquareMeters(this, steps);
        return steps.Under("Area of " + this.Description + (this.Size is { } size ? $" [dimensions: {size.Basis}]" : string.Empty));
    }

    private static double Narrower(Length given, double outsideMm, string parameter)
    {
        double mm = FittingRanges.DiameterMm(given, parameter);
        return mm < outsideMm ? mm : throw AcceptedRange.FromBelow(1, outsideMm, "mm").Refuse(mm, parameter);
    }
}
