using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>Runs verification cases against the library in use.</summary>
/// <remarks>A case that cannot be asked, because its calculation is unknown or its inputs do not fit, does not agree: see <see cref="CaseResult.Outcome"/>.</remarks>
/// <example><code source="ShareARuleSetPage.cs" region="verify" /></example>
public sealed record Verification
{
    private Verification(ValueList<CaseResult> results) => this.Results = results;

    /// <summary>What came of each case, in their order.</summary>
    public ValueList<CaseResult> Results { get; }

    /// <summary>Whether there is a case and all agree. Without a case nothing was verified, so this is false.</summary>
    public bool Passed => this.Results.Count > 0 && this.Results.All(static result => result.Agrees);

    /// <summary>Runs cases.</summary>
    /// <param name="cases">The cases.</param>
    /// <param name="own">A host's own calculations, beside <see cref="CaseCalculations.All"/>; may be left out.</param>
    /// <exception cref="ArgumentException">An own calculation has the name of another.</exception>
    public static Verification Of(IEnumerable<VerificationCase> cases, IEnumerable<CaseCalculation>? own = null)
    {
        ArgumentNullException.ThrowIfNull(cases);
        var byId = new Dictionary<string, CaseCalculation>(StringComparer.Ordinal);
        foreach (CaseCalculation calculation in CaseCalculations.All.Concat(own ?? []))
        {
            if (!byId.TryAdd(calculation.Id, calculation))
            {
                throw new ArgumentException($"The calculation '{calculation.Id}' is there twice.", nameof(own));
            }
        }

        return new(new ValueList<CaseResult>(cases.Select(given => Run(given, byId))));
    }

    /// <summary>A line for each case, then how many agree.</summary>
    public override string ToString() => string.Join('\n', this.Results.Select(static result => result.ToString())
        .Append($"{this.Results.Count(static result => result.Agrees)} of {this.Results.Count} agree"));

    private static CaseResult Run(VerificationCase given, Dictionary<string, CaseCalculation> byId)
    {
        if (!byId.TryGetValue(given.Calculation, out CaseCalculation? calculation))
        {
            return new(given, null, CaseOutcome.NotAsked, $"No calculation '{given.Calculation}' is known.{NearestName.Hint(given.Calculation, byId.Keys)}");
        }

        if (calculation.Refuse(given) is { } fault)
        {
            return new(given, null, CaseOutcome.NotAsked, fault);
        }

        try
        {
            TradeUnit unit = given.Expected.Unit;
            double got = calculation.Compute(given).In(unit);

            // Both sides are decimal numbers in binary digits: an exact half of the last digit may come out one bit more.
            double binary = 1e-14 * Math.Max(1, Math.Abs(given.Expected.Number));
            bool agrees = Math.Abs(got - given.Expected.Number) <= given.Tolerance.In(unit) + binary;
            return new(given, new Measure(got, unit), agrees ? CaseOutcome.Agrees : CaseOutcome.Differs, string.Empty);
        }
        catch (Exception e) when (e is ArgumentException or OverflowException or InvalidOperationException)
        {
            return new(given, null, CaseOutcome.Refused, $"The calculation refused it: {e.Message}");
        }
    }
}
