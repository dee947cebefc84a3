using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>A calculation that verification cases can call by name: one of the library's, or a host's own.</summary>
public sealed class CaseCalculation
{
    private readonly Func<CalculationArguments, Measure> compute;

    /// <summary>Describes a calculation.</summary>
    /// <param name="id">The name that cases use, for instance <c>spiral.angle</c>.</param>
    /// <param name="title">What it works out, a few words.</param>
    /// <param name="inputs">What it is given, each name once.</param>
    /// <param name="result">A unit of what it works out.</param>
    /// <param name="compute">Works it out; it may throw <see cref="ArgumentException"/> for what it refuses.</param>
    /// <exception cref="ArgumentException">A text is empty, or an input stands twice.</exception>
    public CaseCalculation(string id, string title, IEnumerable<CalculationInput> inputs, TradeUnit result, Func<CalculationArguments, Measure> compute)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        ArgumentException.ThrowIfNullOrWhiteSpace(title);
        ArgumentNullException.ThrowIfNull(compute);
        _ = TradeUnits.Symbol(result);
        this.Id = id;
        this.Title = title;
        this.Inputs = new ValueList<CalculationInput>(inputs);
        this.Result = result;
        this.compute = compute;
        if (this.Inputs.GroupBy(static input => input.Name, StringComparer.Ordinal).FirstOrDefault(static group => group.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"The input '{twice.Key}' of '{id}' stands twice.", nameof(inputs));
        }
    }

    /// <summary>The name that cases use.</summary>
    public string Id { get; }

    /// <summary>What it works out.</summary>
    public string Title { get; }

    /// <summary>What it is given.</summary>
    public ValueList<CalculationInput> Inputs { get; }

    /// <summary>A unit of what it works out.</summary>
    public TradeUnit Result { get; }

    /// <summary>Name and inputs.</summary>
    public override string ToString() => $"{this.Id}: {this.Title}, from {string.Join(", ", this.Inputs)}";

    /// <summary>What is wrong with the values of a case, or null.</summary>
    internal string? Refuse(VerificationCase given)
    {
        string[] missing = [.. this.Inputs.Select(static input => input.Name).Except(given.Inputs.Select(static value => value.Name))];
        string[] unknown = [.. given.Inputs.Select(static value => value.Name).Except(this.Inputs.Select(static input => input.Name))];
        if (missing.Length + unknown.Length > 0)
        {
            string lacks = missing.Length > 0 ? $"; missing: {string.Join(", ", missing)}" : string.Empty;
            string slips = unknown.Length > 0 ? $"; unknown: {string.Join(", ", unknown.Select(this.Nearest))}" : string.Empty;
            return $"'{this.Id}' takes {string.Join(", ", this.Inputs)}{lacks}{slips}.";
        }

        foreach (CalculationInput input in this.Inputs)
        {
            Measure value = given.Inputs.Single(other => other.Name == input.Name).Value;
            if (!SameKind(value.Unit, input.Unit))
            {
                return $"'{input.Name}' is {MeasureText.Exact(value)}; wanted a unit such as {Unit(input.Unit)}; {TradeUnits.ThatDo(input.Unit)}.";
            }
        }

        return this.RefuseAnswer(given.Expected);
    }

    /// <summary>What is wrong with the kind of an expected answer, or null.</summary>
    internal string? RefuseAnswer(Measure expected) => SameKind(expected.Unit, this.Result)
        ? null
        : $"'{this.Id}' works out a number in {Unit(this.Result)}; expected was {MeasureText.Exact(expected)}.";

    internal Measure Compute(VerificationCase given) => this.compute(new CalculationArguments(given.Inputs));

    private string Nearest(string name) => NearestName.To(name, this.Inputs.Select(static input => input.Name)) is { } near ? $"{name}, nearest '{near}'" : name;

    private static bool SameKind(TradeUnit one, TradeUnit other) => TradeUnits.Scale(one).Canonical == TradeUnits.Scale(other).Canonical;

    private static string Unit(TradeUnit unit) => unit == TradeUnit.One ? "a plain number" : TradeUnits.Symbol(unit);
}
