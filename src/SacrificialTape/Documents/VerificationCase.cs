using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>A question with a known answer: it shows whether the library in use still agrees with the team.</summary>
/// <remarks>Cases stand beside the rules and outside their fingerprint.</remarks>
public sealed record VerificationCase
{
    /// <summary>Describes a case.</summary>
    /// <param name="id">Its name, once in a document.</param>
    /// <param name="calculation">The calculation that it calls, for instance <c>spiral.angle</c>.</param>
    /// <param name="inputs">What the calculation is given, each name once.</param>
    /// <param name="expected">The answer.</param>
    /// <param name="tolerance">By how much the library may differ; of the same kind of quantity, zero or more.</param>
    /// <param name="basis">Where the answer comes from.</param>
    /// <exception cref="ArgumentException">A text is empty, an input stands twice, or the tolerance is negative or of another kind.</exception>
    public VerificationCase(string id, string calculation, IEnumerable<CaseValue> inputs, Measure expected, Measure tolerance, Basis basis)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        ArgumentException.ThrowIfNullOrWhiteSpace(calculation);
        ArgumentNullException.ThrowIfNull(basis);
        this.Id = id;
        this.Calculation = calculation;
        this.Inputs = new ValueList<CaseValue>((inputs ?? throw new ArgumentNullException(nameof(inputs))).OrderBy(static value => value.Name, StringComparer.Ordinal));
        this.Expected = expected;
        this.Tolerance = tolerance;
        this.Basis = basis;
        if (this.Inputs.GroupBy(static value => value.Name, StringComparer.Ordinal).FirstOrDefault(static group => group.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"The input '{twice.Key}' of case '{id}' stands twice.", nameof(inputs));
        }

        if (tolerance.Key.Unit != expected.Key.Unit || tolerance.Number < 0)
        {
            throw new ArgumentException($"The tolerance of case '{id}', {tolerance}, must be zero or more and of the same kind as {expected}.", nameof(tolerance));
        }
    }

    /// <summary>Its name.</summary>
    public string Id { get; }

    /// <summary>The calculation that it calls.</summary>
    public string Calculation { get; }

    /// <summary>What the calculation is given, in the order of the names.</summary>
    public ValueList<CaseValue> Inputs { get; }

    /// <summary>The answer.</summary>
    public Measure Expected { get; }

    /// <summary>By how much the library may differ.</summary>
    public Measure Tolerance { get; }

    /// <summary>Where the answer comes from.</summary>
    public Basis Basis { get; }

    /// <summary>Name, inputs and answer in one line.</summary>
    public override string ToString() =>
        $"{this.Id}: {this.Calculation}, {string.Join(", ", this.Inputs)} -> {MeasureText.Exact(this.Expected)}";
}
