using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>
/// Which inputs matter at all, from the rows of a <see cref="MorrisDesign"/>: what an answer changes by when one input jumps by half
/// of its distribution, over that half.
/// </summary>
/// <remarks>
/// The mean of the absolute effects (Campolongo, Cariboni and Saltelli, Environ. Model. Softw. 22 (2007) 1509-1518; recalled) ranks
/// the inputs; the deviation tells of curvature and of inputs that act together. Effects that are not finite are left out and counted.
/// </remarks>
public sealed class MorrisScreening : Summary
{
    private readonly Moments[] effects;
    private readonly Moments[] absolute;
    private readonly long rows;

    /// <summary>Sets it up.</summary>
    /// <param name="design">The design whose rows come.</param>
    /// <param name="inputs">The inputs of the sweep.</param>
    /// <exception cref="ArgumentException">The design cannot take these inputs.</exception>
    public MorrisScreening(MorrisDesign design, SweepInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(inputs);
        this.Design = design;
        this.Inputs = inputs;
        this.rows = design.RowsOf(inputs);
        this.effects = [.. inputs.All.Select(static _ => new Moments())];
        this.absolute = [.. inputs.All.Select(static _ => new Moments())];
    }

    /// <summary>The design whose rows come.</summary>
    public MorrisDesign Design { get; }

    /// <summary>The inputs of the sweep.</summary>
    public SweepInputs Inputs { get; }

    /// <summary>The mean effect of each input.</summary>
    public ValueList<double> Mean => [.. this.effects.Select(static one => one.Mean)];

    /// <summary>The mean of the absolute effects of each input.</summary>
    public ValueList<double> MeanOfAbsolute => [.. this.absolute.Select(static one => one.Mean)];

    /// <summary>The standard deviation of the effects of each input.</summary>
    public ValueList<double> Deviation => [.. this.effects.Select(static one => one.Deviation)];

    /// <summary>Between which values each mean effect lies: paths are independent of one another.</summary>
    /// <param name="confidence">How often such an interval holds the true mean, more than 0, less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    /// <exception cref="InvalidOperationException">An input has fewer than two effects.</exception>
    public ValueList<ConfidenceInterval> MeanIntervals(double confidence) => Intervals(this.effects, confidence);

    /// <summary>Between which values each mean of absolute effects lies.</summary>
    /// <param name="confidence">How often such an interval holds the true mean, more than 0, less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    /// <exception cref="InvalidOperationException">An input has fewer than two effects.</exception>
    public ValueList<ConfidenceInterval> MeanOfAbsoluteIntervals(double confidence) => Intervals(this.absolute, confidence);

    /// <summary>How many effects of each input were not finite and left out.</summary>
    public ValueList<long> LeftOut => [.. this.effects.Select(static one => one.NotANumber + one.Infinite)];

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The rows do not begin and end with whole paths, or the design does not have them.</exception>
    public override void Add(long firstRow, ReadOnlySpan<double> answers)
    {
        int stride = this.Inputs.Count + 1;
        CheckPlace("Morris paths come in paths", stride, this.Design, this.rows, firstRow, answers.Length);
        for (long path = firstRow / stride; !answers.IsEmpty; answers = answers[stride..], path++)
        {
            (int[] place, bool[] up) = this.Design.Path(path, this.Inputs.Count);
            for (int i = 0; i < place.Length; i++)
            {
                double effect = (answers[place[i] + 1] - answers[place[i]]) * (up[i] ? 2 : -2);
                this.effects[i].Add(effect);
                this.absolute[i].Add(Math.Abs(effect));
            }
        }
    }

    /// <inheritdoc/>
    public override void Join(Summary other)
    {
        MorrisScreening given = Same<MorrisScreening>(other);
        if (!given.Inputs.IsSame(this.Inputs) || !given.Design.IsSame(this.Design))
        {
            throw new ArgumentException("Its design or inputs are others.", nameof(other));
        }

        for (int i = 0; i < this.effects.Length; i++)
        {
            this.effects[i].Join(given.effects[i]);
            this.absolute[i].Join(given.absolute[i]);
        }
    }

    /// <inheritdoc/>
    public override Summary Fresh() => new MorrisScreening(this.Design, this.Inputs);

    internal override void CheckRows(Design design, SweepInputs inputs) => this.CheckRows(this.Design, this.Inputs, design, inputs);

    private protected override void WriteSetup(BinaryWriter writer)
    {
        writer.Write(this.Design.ToString());
        WriteInputs(writer, this.Inputs);
    }

    private protected override void WriteState(BinaryWriter writer)
    {
        Array.ForEach(this.effects, one => one.Write(writer));
        Array.ForEach(this.absolute, one => one.Write(writer));
    }

    private protected override void ReadState(BinaryReader reader)
    {
        Array.ForEach(this.effects, one => one.Read(reader));
        Array.ForEach(this.absolute, one => one.Read(reader));
    }

    /// <summary>Input by input the effects as invariant text.</summary>
    public override string ToString() => string.Join("; ", this.Inputs.All.Select((input, i) => FormattableString.Invariant(
        $"{input.Name}: mean of absolute effects {this.absolute[i].Mean:G4}, deviation {this.effects[i].Deviation:G4}")));

    private static ValueList<ConfidenceInterval> Intervals(Moments[] moments, double confidence)
    {
        _ = ConfidenceInterval.Checked(confidence);
        return [.. moments.Select(one => one.Count >= 2
            ? ConfidenceInterval.Around(one.Mean, one.StandardError, confidence, one.Count - 1)
            : throw new InvalidOperationException("Intervals need at least two paths with effects that are numbers."))];
    }
}
