using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>How much bare steel each area of zinc feeds beside a bare spot, where it is used up fastest.</summary>
/// <remarks>
/// <para>Evenly: all the zinc that is counted on gives alike. With a decay length: zinc at the edge gives more than zinc
/// behind it, by (a/lambda) coth(a/lambda), and its edge goes first.</para>
/// <para>All bare steel is counted, also what lies beyond the reach: that ends the zinc sooner, and is the safer reading.
/// Lengths: 0.001 mm to 100 m.</para>
/// </remarks>
public sealed record ZincFeed : IHasWorkings
{
    private readonly StoredNumber bareMm;
    private readonly StoredNumber zincMm;
    private readonly StoredNumber decayMm;
    private readonly bool round;

    private ZincFeed(bool round, double bareMm, double? zincMm, double? decayMm)
    {
        this.round = round;
        this.bareMm = new StoredNumber(bareMm);
        this.zincMm = zincMm is { } zinc ? new StoredNumber(zinc) : default;
        this.decayMm = decayMm is { } decay ? new StoredNumber(decay) : default;
    }

    /// <summary>Bare steel for each area of zinc, where the zinc is used up fastest.</summary>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.MarginFeed))]
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.RingFeed))]
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.RoundFeed))]
    public AreaRatio BarePerZinc => AreaRatio.FromRatio(this.Solve(default(NoSteps)));

    internal double BarePerZincRatio => this.Solve(default(NoSteps));

    /// <summary>A margin of bare steel beside zinc that gives alike over a width.</summary>
    /// <param name="bareMargin">Width of the bare margin that this zinc feeds: half of a gap with tape on both sides.</param>
    /// <param name="zincWidth">Width of zinc that feeds it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is outside its range.</exception>
    public static ZincFeed BesideMargin(Length bareMargin, Length zincWidth) => new(false, Mm(bareMargin, nameof(bareMargin)), Mm(zincWidth, nameof(zincWidth)), null);

    /// <summary>A margin of bare steel beside zinc that gives most at its edge.</summary>
    /// <param name="bareMargin">Width of the bare margin that this zinc feeds: half of a gap with tape on both sides.</param>
    /// <param name="zincWidth">Width of zinc to the middle of the strip, or to its far edge where that has no bare steel.</param>
    /// <param name="zincDecay">Decay length on the zinc, <see cref="ThinFilm.DecayLength"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is outside its range.</exception>
    public static ZincFeed BesideMargin(Length bareMargin, Length zincWidth, Length zincDecay) =>
        new(false, Mm(bareMargin, nameof(bareMargin)), Mm(zincWidth, nameof(zincWidth)), Mm(zincDecay, nameof(zincDecay)));

    /// <summary>A round holiday in a ring of zinc that gives alike.</summary>
    /// <param name="diameter">Diameter of the holiday.</param>
    /// <param name="ring">Width of the ring of zinc that feeds it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is outside its range.</exception>
    public static ZincFeed RoundHolidayInRing(Length diameter, Length ring) => new(true, Mm(diameter, nameof(diameter)), Mm(ring, nameof(ring)), null);

    /// <summary>A round holiday in wide zinc that gives most at its edge.</summary>
    /// <param name="diameter">Diameter of the holiday.</param>
    /// <param name="zincDecay">Decay length on the zinc, <see cref="ThinFilm.DecayLength"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is outside its range.</exception>
    public static ZincFeed RoundHoliday(Length diameter, Length zincDecay) =>
        new(true, Mm(diameter, nameof(diameter)), null, Mm(zincDecay, nameof(zincDecay)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Bare steel that zinc feeds");
    }

    /// <summary>The same, into a recorder of the caller's.</summary>
    internal double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (this.round)
        {
            double radius = this.bareMm.Bare / 2;
            return this.decayMm.IsSet
                ? ReachKernel.RoundFeed(radius, this.decayMm.Bare, steps)
                : ReachKernel.RingFeed(radius, this.zincMm.Bare, steps);
        }

        double peak = this.decayMm.IsSet ? ReachKernel.PeakOverMean(this.zincMm.Bare, this.decayMm.Bare, steps) : 1;
        return ReachKernel.MarginFeed(this.bareMm.Bare, this.zincMm.Bare, peak, steps);
    }

    private static double Mm(Length length, string parameter) => FilmSegment.AcceptedWidth.Check(UnitConversions.Millimeters(length), parameter);
}
