using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A head of a spherical crown and a torus-shaped knuckle between crown and straight flange.</summary>
/// <remarks>
/// The knuckle radius is at most half the diameter, the crown radius at least half of it, both on the same face. A
/// knuckle radius of 0 on the outside is a dish without a knuckle. Both faces of a plate of even thickness have this
/// form, each radius one thickness apart.
/// </remarks>
public sealed record TorisphericalHead : Head
{
    private const double MostMm = 1e6;
    private const double KloepperKnuckle = 0.1;
    private const double KorbbogenCrown = 0.8;
    private const double KorbbogenKnuckle = 0.154;

    private readonly StoredNumber crownMm;
    private readonly StoredNumber knuckleMm;

    private TorisphericalHead(double outsideDiameterMm, double crownMm, double knuckleMm, double straightFlangeMm, Basis? form = null)
        : base(outsideDiameterMm, straightFlangeMm, form)
    {
        this.crownMm = new StoredNumber(crownMm);
        this.knuckleMm = new StoredNumber(knuckleMm);
    }

    /// <summary>Radius of the crown on the outside.</summary>
    public Length OutsideCrownRadius => Length.FromMillimeters(this.crownMm.Bare);

    /// <summary>Radius of the knuckle on the outside.</summary>
    public Length OutsideKnuckleRadius => Length.FromMillimeters(this.knuckleMm.Bare);

    internal override string Form => "torispherical head";

    internal override double DepthMm => HeadKernel.TorisphericalDepthMm(
        this.OutsideDiameterMm, this.crownMm.Bare, this.knuckleMm.Bare);

    internal override Meridian Meridian => HeadKernel.TorisphericalMeridian(
        this.OutsideDiameterMm, this.crownMm.Bare, this.knuckleMm.Bare, this.StraightFlangeMm);

    /// <summary>A head by its outside diameter and outside radii.</summary>
    /// <param name="outsideDiameter">Outside diameter.</param>
    /// <param name="outsideCrownRadius">At least half the diameter, at most 1000 m.</param>
    /// <param name="outsideKnuckleRadius">0 to half the diameter.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TorisphericalHead FromOutside(
        Length outsideDiameter, Length outsideCrownRadius, Length outsideKnuckleRadius, Length straightFlange)
    {
        double diameter = FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter));
        return new(
            diameter,
            FittingRanges.Within(UnitConversions.Millimeters(outsideCrownRadius), diameter / 2, MostMm, nameof(outsideCrownRadius)),
            FittingRanges.Within(UnitConversions.Millimeters(outsideKnuckleRadius), 0, diameter / 2, nameof(outsideKnuckleRadius)),
            FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange)));
    }

    /// <summary>A head by its inside diameter and inside radii.</summary>
    /// <param name="insideDiameter">Inside diameter.</param>
    /// <param name="insideCrownRadius">At least half the inside diameter, at most 1000 m.</param>
    /// <param name="insideKnuckleRadius">0 to half the inside diameter.</param>
    /// <param name="thickness">Of the plate.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TorisphericalHead FromInside(
        Length insideDiameter, Length insideCrownRadius, Length insideKnuckleRadius, Length thickness, Length straightFlange)
    {
        double diameter = FittingRanges.LargeDiameterMm(insideDiameter, nameof(insideDiameter));
        double crown = FittingRanges.Within(
            UnitConversions.Millimeters(insideCrownRadius), diameter / 2, MostMm, nameof(insideCrownRadius));
        double knuckle = FittingRanges.Within(
            UnitConversions.Millimeters(insideKnuckleRadius), 0, diameter / 2, nameof(insideKnuckleRadius));
        double plate = FittingRanges.ThicknessMm(thickness, nameof(thickness));
        return new(
            diameter + (2 * plate), crown + plate, knuckle + plate, FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange)));
    }

    /// <summary>A Klöpper head by DIN 28011 (recalled, check before use): inside radii 1.0 and 0.1 of the outside diameter.</summary>
    /// <param name="outsideDiameter">Outside diameter.</param>
    /// <param name="thickness">Of the plate, at most 0.4 of the diameter.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TorisphericalHead Kloepper(Length outsideDiameter, Length thickness, Length straightFlange) =>
        ByOutsideDiameter(outsideDiameter, 1, KloepperKnuckle, thickness, straightFlange, FittingSources.Kloepper);

    /// <summary>A Korbbogen head by DIN 28013 (recalled, check before use): inside radii 0.8 and 0.154 of the outside diameter.</summary>
    /// <param name="outsideDiameter">Outside diameter.</param>
    /// <param name="thickness">Of the plate, at most 0.346 of the diameter.</param>
    /// <param name="straightFlange">Length of the straight flange; may be zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TorisphericalHead Korbbogen(Length outsideDiameter, Length thickness, Length straightFlange) =>
        ByOutsideDiameter(outsideDiameter, KorbbogenCrown, KorbbogenKnuckle, thickness, straightFlange, FittingSources.Korbbogen);

    /// <summary>Which of the two named forms it has by its basis; null for one that was measured.</summary>
    internal bool? IsKloepper => this.FormBasis is null ? null : this.FormBasis.Equals(FittingSources.Kloepper);

    /// <summary>The same head with a named form as its basis, where its radii are of that form.</summary>
    /// <exception cref="ArgumentException">They are not.</exception>
    internal TorisphericalHead OfForm(bool kloepper)
    {
        double diameter = this.OutsideDiameterMm;
        double knuckleShare = kloepper ? KloepperKnuckle : KorbbogenKnuckle;
        double plate = this.crownMm.Bare - ((kloepper ? 1 : KorbbogenCrown) * diameter);
        double knuckle = Math.Min((knuckleShare * diameter) + plate, diameter / 2);
        double room = diameter * WithAllowance.RelativeAllowance;
        return plate > -room && Math.Abs(knuckle - this.knuckleMm.Bare) <= room
            ? new(diameter, this.crownMm.Bare, this.knuckleMm.Bare, this.StraightFlangeMm, kloepper ? FittingSources.Kloepper : FittingSources.Korbbogen)
            : throw new ArgumentException($"Crown and knuckle radius of {this.Description} are not of this form.", nameof(kloepper));
    }

    internal override double DishSquareMeters<TSteps>(TSteps steps) => HeadKernel.TorisphericalSquareMeters(
        this.OutsideDiameterMm, this.crownMm.Bare, this.knuckleMm.Bare, steps);

    // At the thickest plate the outside knuckle reaches the axis; the last digit of the sum must not carry it beyond.
    private static TorisphericalHead ByOutsideDiameter(
        Length outsideDiameter, double crownShare, double knuckleShare, Length thickness, Length straightFlange, Basis form)
    {
        double diameter = FittingRanges.LargeDiameterMm(outsideDiameter, nameof(outsideDiameter));
        double plate = FittingRanges.ThicknessMm(thickness, nameof(thickness));
        _ = FittingRanges.Within(plate, 0, diameter * (0.5 - knuckleShare), nameof(thickness));
        return new(
            diameter,
            (crownShare * diameter) + plate,
            Math.Min((knuckleShare * diameter) + plate, diameter / 2),
            FittingRanges.StraightFlangeMm(straightFlange, nameof(straightFlange)),
            form);
    }
}
