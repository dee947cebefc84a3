using System.Text;
using SacrificialTape.Quantities;

namespace SacrificialTape.Provenance;

/// <summary>The steps from what was put in to what came out, made on demand by running the same code again.</summary>
public sealed record Workings
{
    /// <summary>Describes the workings of one result.</summary>
    /// <param name="title">What was worked out.</param>
    /// <param name="steps">The steps in order.</param>
    /// <exception cref="ArgumentException">The title is empty.</exception>
    public Workings(string title, ValueList<WorkingStep> steps)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(title);
        ArgumentNullException.ThrowIfNull(steps);
        this.Title = title;
        this.Steps = steps;
    }

    /// <summary>What was worked out.</summary>
    public string Title { get; }

    /// <summary>The steps in order.</summary>
    public ValueList<WorkingStep> Steps { get; }

    /// <summary>The workings as plain text, a line for the title and one for each step.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(this.Title);
        foreach (WorkingStep step in this.Steps)
        {
            text.Append('\n').Append("  ").Append(step);
        }

        return text.ToString();
    }

    /// <summary>The workings as Markdown with TeX maths, one list item for each step.</summary>
    public string ToMarkdown()
    {
        var text = new StringBuilder("**").Append(this.Title).Append("**\n\n");
        foreach (WorkingStep step in this.Steps)
        {
            Formula formula = step.Formula;
            text.Append("1. ").Append(formula.Result.Meaning).Append(": \\(")
                .Append(MathName(formula.Result.Name)).Append(" = ").Append(formula.Tex).Append("\\) = ")
                .Append(WorkingStep.Shown(step.Result));
            for (int i = 0; i < step.Inputs.Count; i++)
            {
                text.Append(i == 0 ? ", with " : ", ").Append("\\(").Append(MathName(formula.Inputs[i].Name))
                    .Append("\\) = ").Append(WorkingStep.Shown(step.Inputs[i]));
            }

            text.Append(". *").Append(formula.Basis).Append("*\n");
        }

        return text.ToString();
    }

    /// <summary>The same workings with every formula on another basis.</summary>
    internal Workings RestingOn(Basis basis) => new(
        this.Title,
        new ValueList<WorkingStep>(this.Steps.Select(step => new WorkingStep(step.Formula.RestingOn(basis), step.Inputs, step.Result))));

    // One-letter names are set as they are, Greek names by their TeX command, longer ones upright.
    private static string MathName(string name) => name switch
    {
        "theta" or "lambda" or "rho" or "delta" or "phi" => "\\" + name,
        { Length: 1 } => name,
        _ => $"\\mathrm{{{name.Replace("_", "\\_", StringComparison.Ordinal)}}}",
    };
}
