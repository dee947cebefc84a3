using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>Readings at stations along a line, no farther apart than stated, one station at each end.</summary>
/// <remarks>Length more than 0; farthest apart more than 0; round each station 1 to 24. No document says how far: the spacing is your own.</remarks>
public sealed record SamplingLine : IHasWorkings
{
    private readonly StoredNumber lengthMm;
    private readonly StoredNumber spacingMm;

    /// <summary>Describes stations.</summary>
    /// <param name="length">Length of the line.</param>
    /// <param name="farthestApart">Farthest that two stations lie apart.</param>
    /// <param name="round">Readings round each station.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or there would be more than a million readings.</exception>
    public SamplingLine(Length length, Length farthestApart, int round = 4)
    {
        this.lengthMm = new StoredNumber(AcceptedRange.Above(0, "mm").Check(UnitConversions.Millimeters(length), nameof(length)));
        this.spacingMm = new StoredNumber(AcceptedRange.Above(0, "mm").Check(UnitConversions.Millimeters(farthestApart), nameof(farthestApart)));
        AcceptedRange.Between(1, 24, string.Empty).Check(round);
        this.Round = round;
        AcceptedRange.Between(1, 1_000_000, "readings").Check(this.Solve(default(NoSteps)), nameof(farthestApart));
    }

    /// <summary>Length of the line.</summary>
    public Length Length => Length.FromMillimeters(this.lengthMm.Bare);

    /// <summary>Farthest that two stations lie apart.</summary>
    public Length FarthestApart => Length.FromMillimeters(this.spacingMm.Bare);

    /// <summary>Readings round each station.</summary>
    public int Round { get; }

    /// <summary>How many readings.</summary>
    public int Readings => (int)this.Solve(default(NoSteps));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Readings along a line");
    }

    /// <summary>How many and where, as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Readings} readings: {this.Round} round each station, stations at most {this.spacingMm.Bare / 1000:0.###} m apart on {this.lengthMm.Bare / 1000:0.###} m");

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        SamplingKernel.Stations(this.lengthMm.Bare, this.spacingMm.Bare, this.Round, steps);
}
