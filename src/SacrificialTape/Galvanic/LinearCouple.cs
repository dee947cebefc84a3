using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>Zinc beside steel under a thin film, both linear: the closed form, with finite widths.</summary>
/// <remarks>
/// The far ends are insulated: the middle of a gap between two tapes, the middle of a strip. An inert gap and a contact
/// resistance at the edge come in series.
/// </remarks>
public sealed record LinearCouple : IHasWorkings
{
    private readonly StoredNumber gapMm;
    private readonly StoredNumber contactOhmM;
    private readonly LinearCoupleTerms terms;

    /// <summary>Describes a couple.</summary>
    /// <param name="film">The film.</param>
    /// <param name="zinc">The zinc.</param>
    /// <param name="zincWidth">Its width from the edge to its far end.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="steelWidth">Its width from the edge to its far end: half of a gap between two tapes.</param>
    /// <param name="inertGap">Paint or adhesive between them, at least 0; may be left out.</param>
    /// <param name="contact">Contact resistance of the zinc to the steel times the length of the edge, at least 0; may be left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LinearCouple(
        ThinFilm film,
        LinearElectrode zinc,
        Length zincWidth,
        LinearElectrode steel,
        Length steelWidth,
        Length? inertGap = null,
        ElectricResistivity? contact = null)
    {
        ArgumentNullException.ThrowIfNull(film);
        ArgumentNullException.ThrowIfNull(zinc);
        ArgumentNullException.ThrowIfNull(steel);
        this.Film = film;
        this.Zinc = new FilmSegment(zinc, zincWidth);
        this.Steel = new FilmSegment(steel, steelWidth);
        this.gapMm = new StoredNumber(inertGap is { } gap ? AcceptedRange.Between(0, 1000, "mm").Check(UnitConversions.Millimeters(gap), nameof(inertGap)) : 0);
        this.contactOhmM = new StoredNumber(contact is { } stated ? AcceptedRange.AtLeast(0, "ohm.m").Check(UnitConversions.OhmMeters(stated), nameof(contact)) : 0);
        this.terms = this.Solve(default(NoSteps));
    }

    /// <summary>The film.</summary>
    public ThinFilm Film { get; }

    /// <summary>The zinc.</summary>
    public FilmSegment Zinc { get; }

    /// <summary>The steel.</summary>
    public FilmSegment Steel { get; }

    /// <summary>Decay length on the steel.</summary>
    public Length SteelDecayLength => Length.FromMillimeters(this.terms.SteelDecayMm);

    /// <summary>Decay length on the zinc.</summary>
    public Length ZincDecayLength => Length.FromMillimeters(this.terms.ZincDecayMm);

    /// <summary>Current over the edge.</summary>
    public EdgeCurrent Current => EdgeCurrent.FromMilliamperesPerMeter(this.terms.CurrentMilliamperesPerM);

    /// <summary>Potential at the edge of the steel.</summary>
    public ElectrodePotential SteelEdge => this.Potential(this.terms.SteelEdgeV);

    /// <summary>Potential at the edge of the zinc; that of the steel unless something lies between.</summary>
    public ElectrodePotential ZincEdge => this.Potential(this.terms.ZincEdgeV);

    /// <summary>Potential at the far end of the steel, where it is protected least.</summary>
    public ElectrodePotential FarEnd => this.Potential(this.terms.FarEndV);

    /// <summary>How much more the edge of the zinc gives than its mean: (a/lambda) coth(a/lambda).</summary>
    public double PeakOverMean => this.terms.PeakOverMean;

    /// <summary>Current density at the edge of the zinc.</summary>
    public ElectricCurrentDensity PeakZincCurrent => ElectricCurrentDensity.FromAmperesPerSquareMeter(this.terms.PeakAmperesPerM2);

    internal LinearCoupleTerms Terms => this.terms;

    /// <summary>Potential on the steel at a distance from its edge.</summary>
    /// <param name="distance">0 to the width of the steel.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside the steel.</exception>
    public ElectrodePotential OnSteel(Length distance)
    {
        double mm = AcceptedRange.Between(0, this.Steel.WidthMm, "mm").Check(UnitConversions.Millimeters(distance), nameof(distance));
        double rest = ((LinearElectrode)this.Steel.Electrode).RestCalomel;
        return this.Potential(rest + ((this.terms.SteelEdgeV - rest) * ReachKernel.ShareAt(mm, this.Steel.WidthMm, this.terms.SteelDecayMm)));
    }

    /// <summary>Potential on the zinc at a distance from its edge.</summary>
    /// <param name="distance">0 to the width of the zinc.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside the zinc.</exception>
    public ElectrodePotential OnZinc(Length distance)
    {
        double mm = AcceptedRange.Between(0, this.Zinc.WidthMm, "mm").Check(UnitConversions.Millimeters(distance), nameof(distance));
        double rest = ((LinearElectrode)this.Zinc.Electrode).RestCalomel;
        return this.Potential(rest + ((this.terms.ZincEdgeV - rest) * ReachKernel.ShareAt(mm, this.Zinc.WidthMm, this.terms.ZincDecayMm)));
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Zinc beside steel under a thin film, linear");
    }

    /// <summary>The couple in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Zinc} beside {this.Steel} under {this.Film}");

    private ElectrodePotential Potential(double calomel) =>
        ElectrodePotential.FromVoltsCalomel(calomel, this.Steel.Electrode.RestPotential!.Value.Reference);

    private LinearCoupleTerms Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        var zinc = (LinearElectrode)this.Zinc.Electrode;
        var steel = (LinearElectrode)this.Steel.Electrode;
        return ReachKernel.Couple(
            new LinearCoupleInput(
                this.Film.SiemensPerM,
                this.Film.Um,
                zinc.RestCalomel,
                zinc.OhmM2,
                this.Zinc.WidthMm,
                steel.RestCalomel,
                steel.OhmM2,
                this.Steel.WidthMm,
                this.gapMm.Bare,
                this.contactOhmM.Bare),
            steps);
    }
}
