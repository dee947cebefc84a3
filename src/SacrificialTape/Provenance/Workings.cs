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
    public Workings(string title, IEnumerable<WorkingStep> steps)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(title);
        this.Title = title;
        this.Steps = steps.Listed();
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

    /// <summary>
    /// The workings as Markdown, one list item for each step, with TeX between dollar signs, as DocFX and most other
    /// renderers read it.
    /// </summary>
    public string ToMarkdown()
    {
        var text = new StringBuilder("**").Append(MarkdownText.Escaped(this.Title)).Append("**\n\n");
        foreach (WorkingStep step in this.Steps)
        {
            Formula formula = step.Formula;
            text.Append("1. ").Append(MarkdownText.Escaped(formula.Result.Meaning)).Append(": $")
                .Append(MarkdownText.MathName(formula.Result.Name)).Append(" = ").Append(formula.Tex).Append("$ = ")
                .Append(MarkdownText.Escaped(WorkingStep.Shown(step.Result)));
            for (int i = 0; i < step.Inputs.Count; i++)
            {
                text.Append(i == 0 ? ", with $" : ", $").Append(MarkdownText.MathName(formula.Inputs[i].Name))
                    .Append("$ = ").Append(MarkdownText.Escaped(WorkingStep.Shown(step.Inputs[i])));
            }

            text.Append(". *").Append(MarkdownText.Escaped(formula.Basis.ToString())).Append("*\n");
        }

        return text.ToString();
    }

    /// <summary>The workings of several results as one, in their order.</summary>
    internal static Workings Joined(string title, IEnumerable<IHasWorkings> parts) =>
        new(title, new ValueList<WorkingStep>(parts.SelectMany(static part => part.ShowWorkings().Steps)));

    /// <summary>The same workings with every formula on another basis.</summary>
    internal Workings RestingOn(Basis basis) => new(
        this.Title,
        new ValueList<WorkingStep>(this.Steps.Select(step => new WorkingStep(step.Formula.RestingOn(basis), step.Inputs, step.Result))));
}
