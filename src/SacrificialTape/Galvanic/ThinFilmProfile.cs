using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>The potential along stretches of zinc, steel and inert surface under a thin film, solved numerically.</summary>
/// <remarks>
/// <para>One to 20 stretches from left to right, at least one of them a metal; both ends are insulated, as middles of strips and gaps
/// are. Any electrodes: the balance sigma d E'' = i(E) has one solution, since every current grows with the potential.</para>
/// <para>Finite volumes on grids halved until the extrapolated potentials settle; <see cref="EstimatedError"/> is the last
/// change, as a share of the difference of the rest potentials. If they do not settle it throws.</para>
/// </remarks>
public sealed record ThinFilmProfile : IHasWorkings
{
    /// <summary>The error asked for when none is stated.</summary>
    internal const double UsualError = 1e-9;

    /// <summary>Solves for stretches to 1e-9 of the difference of their rest potentials.</summary>
    /// <param name="film">The film.</param>
    /// <param name="segments">The stretches, from left to right.</param>
    /// <exception cref="ArgumentException">There is no stretch, too many, or none of a metal.</exception>
    /// <exception cref="ArithmeticException">The potentials did not settle.</exception>
    public ThinFilmProfile(ThinFilm film, IEnumerable<FilmSegment> segments)
        : this(film, segments.Listed(), UsualError)
    {
    }

    /// <summary>Solves for stretches to an error of the user's choice.</summary>
    /// <param name="film">The film.</param>
    /// <param name="segments">The stretches, from left to right.</param>
    /// <param name="relativeError">1e-11 to 0.01 of the difference of the rest potentials.</param>
    /// <exception cref="ArgumentException">There is no stretch, too many, or none of a metal.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The error is outside its range.</exception>
    /// <exception cref="ArithmeticException">The potentials did not settle.</exception>
    public ThinFilmProfile(ThinFilm film, IEnumerable<FilmSegment> segments, double relativeError)
    {
        ValueList<FilmSegment> allSegments = segments.Listed();
        ArgumentNullException.ThrowIfNull(film);
        AcceptedRange.Between(1, 20, "stretches").Check(allSegments.Count, nameof(segments));
        AcceptedRange.Between(1e-11, 0.01, "").Check(relativeError);
        FilmSegment first = allSegments.FirstOrDefault(static segment => segment.Electrode.RestPotential is not null)
            ?? throw new ArgumentException("None of the stretches is a metal.", nameof(segments));
        this.Film = film;
        this.Segments = allSegments;

        var solved = new (ElectrodeTerms Electrode, double LengthMm)[allSegments.Count];
        for (int i = 0; i < solved.Length; i++)
        {
            solved[i] = (allSegments[i].Electrode.Under(film), allSegments[i].WidthMm);
        }

        ThinFilmAnswer answer = ThinFilmSolver.Solve(film.Spread, solved, relativeError);
        if (!(answer.Error <= relativeError))
        {
            throw new ArithmeticException(string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"The potentials settled to {answer.Error:G2} on {answer.FinestIntervals} intervals, not to {relativeError:G2}."));
        }

        this.EstimatedError = answer.Error;
        this.Intervals = answer.FinestIntervals;
        this.SegmentCurrents = new ValueList<EdgeCurrent>(answer.SegmentCurrents.Select(static current => EdgeCurrent.FromMilliamperesPerMeter(current)));
        this.Points = Profile(answer, solved, first.Electrode.RestPotential!.Value.Reference);
    }

    /// <summary>The film.</summary>
    public ThinFilm Film { get; }

    /// <summary>The stretches, from left to right.</summary>
    public ValueList<FilmSegment> Segments { get; }

    /// <summary>The profile; where two stretches meet, each has its own point.</summary>
    public ValueList<FilmPoint> Points { get; }

    /// <summary>The net current of each stretch over each metre of edge; positive where metal is lost.</summary>
    public ValueList<EdgeCurrent> SegmentCurrents { get; }

    /// <summary>Estimated error of the potentials, as a share of the difference of the rest potentials.</summary>
    public double EstimatedError { get; }

    /// <summary>Intervals of the finest grid.</summary>
    public int Intervals { get; }

    /// <summary>The highest potential on a stretch: where steel is protected least.</summary>
    /// <param name="segment">The stretch, counted from 0.</param>
    public ElectrodePotential HighestOn(int segment) =>
        this.On(segment).MaxBy(static point => point.Potential.Volts).Potential;

    /// <summary>The lowest potential on a stretch.</summary>
    /// <param name="segment">The stretch, counted from 0.</param>
    public ElectrodePotential LowestOn(int segment) =>
        this.On(segment).MinBy(static point => point.Potential.Volts).Potential;

    /// <summary>The largest current density of a stretch over its mean: how unevenly zinc is used up.</summary>
    /// <param name="segment">The stretch, counted from 0.</param>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.MeanCurrent))]
    public double PeakOverMean(int segment)
    {
        double mean = ReachKernel.MeanCurrent(this.SegmentCurrents[segment].MilliamperesPerMeter, this.Segments[segment].WidthMm, default(NoSteps));
        return this.On(segment).Max(point => UnitConversions.AmperesPerSquareMeter(point.CurrentDensity) / mean);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        double given = 0;
        double taken = 0;
        for (int i = 0; i < this.Segments.Count; i++)
        {
            double current = this.SegmentCurrents[i].MilliamperesPerMeter;
            _ = ReachKernel.MeanCurrent(current, this.Segments[i].WidthMm, steps);
            given += Math.Max(0, current);
            taken += Math.Max(0, -current);
        }

        steps.Add(ReachFormulas.Balance, [given, taken], given - taken);
        return steps.Under(string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"Profile under a {this.Film}, solved numerically on {this.Intervals} intervals, estimated error {this.EstimatedError:G2}"));
    }

    /// <summary>Film and segments in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{string.Join("; ", this.Segments)} under {this.Film}");

    private IEnumerable<FilmPoint> On(int segment)
    {
        AcceptedRange.Between(0, this.Segments.Count - 1, "").Check(segment);
        return this.Points.Where(point => point.Segment == segment);
    }

    private static ValueList<FilmPoint> Profile(
        ThinFilmAnswer answer, (ElectrodeTerms Electrode, double LengthMm)[] segments, ReferenceElectrode reference)
    {
        var points = new List<FilmPoint>(answer.Potential.Length + segments.Length);
        for (int piece = 0; piece < answer.PieceSegments.Length; piece++)
        {
            int segment = answer.PieceSegments[piece];
            bool goesOn = piece > 0 && answer.PieceSegments[piece - 1] == segment;
            for (int i = goesOn ? 1 : 0; i <= ThinFilmSolver.Coarsest; i++)
            {
                int node = (piece * ThinFilmSolver.Coarsest) + i;
                points.Add(new FilmPoint(
                    segment,
                    answer.DistanceMm[node],
                    ElectrodePotential.FromVoltsCalomel(answer.Potential[node], reference),
                    segments[segment].Electrode.Current(answer.Potential[node])));
            }
        }

        return ValueList<FilmPoint>.Owning([.. points]);
    }
}
