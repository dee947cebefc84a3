using System.Text;
using SacrificialTape.Quantities;

namespace SacrificialTape.Provenance;

/// <summary>One step of the workings: a formula, the numbers that went in and the number that came out.</summary>
public sealed record WorkingStep
{
    private const int ShownDigits = 9;

    /// <summary>Describes a step.</summary>
    /// <param name="formula">The formula used.</param>
    /// <param name="inputs">A number for each of its symbols, in their order and units.</param>
    /// <param name="result">What came out, in the unit of its result.</param>
    /// <exception cref="ArgumentException">There is not one number for each symbol.</exception>
    public WorkingStep(Formula formula, IEnumerable<Measure> inputs, Measure result)
    {
        ValueList<Measure> allInputs = inputs.Listed();
        ArgumentNullException.ThrowIfNull(formula);
        if (allInputs.Count != formula.Inputs.Count)
        {
            throw new ArgumentException(
                $"Formula '{formula.Id}' has {formula.Inputs.Count} symbols, but {allInputs.Count} numbers were given.",
                nameof(inputs));
        }

        this.Formula = formula;
        this.Inputs = allInputs;
        this.Result = result;
    }

    /// <summary>The formula used.</summary>
    public Formula Formula { get; }

    /// <summary>A number for each symbol of the formula, in their order.</summary>
    public ValueList<Measure> Inputs { get; }

    /// <summary>What came out.</summary>
    public Measure Result { get; }

    /// <summary>The step in one line of plain text, nine significant digits to a number.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        text.Append(this.Formula.Result.Meaning).Append(": ").Append(this.Formula).Append(" = ").Append(Shown(this.Result));
        string separator = "  with ";
        for (int i = 0; i < this.Inputs.Count; i++)
        {
            text.Append(separator).Append(this.Formula.Inputs[i].Name).Append(" = ").Append(Shown(this.Inputs[i]));
            separator = ", ";
        }

        return text.Append("  [").Append(this.Formula.Basis).Append(']').ToString();
    }

    internal static string Shown(Measure measure) => MeasureText.Write(measure.Number, measure.Unit, ShownDigits);
}
