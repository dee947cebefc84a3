using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace HostTool;

/// <summary>A lighting column of eight flats that tapers from foot to head. The library knows round ones only.</summary>
/// <remarks>Across flats: at the head more than 0 and at most as at the foot. Height: more than 0.</remarks>
#region surface
public sealed record OctagonalColumn : Surface
{
    public const int Flats = 8;

    // Doubles and not lengths are stored: 1 m and 1000 mm must be equal, since estimates compare surfaces.
    private readonly double footMm;
    private readonly double headMm;
    private readonly double heightMm;

    public OctagonalColumn(Length acrossFlatsAtFoot, Length acrossFlatsAtHead, Length height)
    {
        this.footMm = Positive(acrossFlatsAtFoot, nameof(acrossFlatsAtFoot));
        this.headMm = Positive(acrossFlatsAtHead, nameof(acrossFlatsAtHead));
        this.heightMm = Positive(height, nameof(height));
        if (this.headMm > this.footMm)
        {
            throw new ArgumentOutOfRangeException(nameof(acrossFlatsAtHead), string.Create(
                CultureInfo.InvariantCulture, $"{this.headMm} mm is more than the {this.footMm} mm at the foot; a column tapers upwards."));
        }
    }

    public Length FlatAtFoot => Length.FromMillimeters(SideMm(this.footMm));

    public Length FlatAtHead => Length.FromMillimeters(SideMm(this.headMm));

    public Length SlantHeight => Length.FromMillimeters(Math.Sqrt((this.heightMm * this.heightMm) + (this.TaperMm * this.TaperMm)));

    public override Area Area => Area.FromSquareMillimeters(
        Flats * (this.FlatAtFoot.Millimeters + this.FlatAtHead.Millimeters) / 2 * this.SlantHeight.Millimeters);

    public override string Description => string.Create(
        CultureInfo.InvariantCulture, $"octagonal column {this.footMm:0.#}/{this.headMm:0.#} mm across flats, {this.heightMm / 1000:0.###} m high");

    private double TaperMm => (this.footMm - this.headMm) / 2;

    public override Workings ShowWorkings() => new("Area of an " + this.Description, [.. this.Steps()]);

    internal IEnumerable<WorkingStep> Steps() =>
    [
        ColumnFormulas.FlatAtFoot.Step(this.FlatAtFoot.Millimeters, this.footMm, Flats),
        ColumnFormulas.FlatAtHead.Step(this.FlatAtHead.Millimeters, this.headMm, Flats),
        ColumnFormulas.SlantHeight.Step(this.SlantHeight.Millimeters, this.heightMm, this.footMm, this.headMm),
        ColumnFormulas.Area.Step(
            this.Area.SquareMeters, Flats, this.FlatAtFoot.Millimeters, this.FlatAtHead.Millimeters, this.SlantHeight.Millimeters),
    ];

    private static double SideMm(double acrossFlatsMm) => acrossFlatsMm * Math.Tan(Math.PI / Flats);

    private static double Positive(Length length, string parameter) => length.Millimeters is > 0 and < double.PositiveInfinity
        ? length.Millimeters
        : throw new ArgumentOutOfRangeException(parameter, string.Create(
            CultureInfo.InvariantCulture, $"{length.Millimeters} mm is outside the accepted range: more than 0 mm."));
}
#endregion
