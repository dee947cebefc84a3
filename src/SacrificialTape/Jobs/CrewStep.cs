namespace SacrificialTape.Jobs;

/// <summary>One step for the crew.</summary>
public sealed record CrewStep
{
    internal CrewStep(CrewActivity activity, string text)
    {
        this.Activity = activity;
        this.Text = text;
    }

    /// <summary>What it is.</summary>
    public CrewActivity Activity { get; }

    /// <summary>What to do.</summary>
    public string Text { get; }
}
