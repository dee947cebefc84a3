using SacrificialTape.Quantities;

namespace SacrificialTape.Provenance;

/// <summary>The recorder that keeps every step.</summary>
internal readonly struct StepList : IStepRecorder
{
    private readonly List<WorkingStep> steps;

    public StepList() => this.steps = [];

    public static bool Records => true;

    public void Add(Formula formula, ReadOnlySpan<double> inputs, double result)
    {
        var numbers = new Measure[inputs.Length];
        for (int i = 0; i < inputs.Length; i++)
        {
            numbers[i] = new Measure(inputs[i], formula.Inputs[i].Unit);
        }

        this.steps.Add(new WorkingStep(formula, new ValueList<Measure>(numbers), new Measure(result, formula.Result.Unit)));
    }

    internal Workings Under(string title) => new(title, new ValueList<WorkingStep>(this.steps));
}
