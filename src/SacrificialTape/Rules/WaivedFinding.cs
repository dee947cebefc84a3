namespace SacrificialTape.Rules;

/// <summary>A finding that may stand, and the waiver that says so.</summary>
public sealed record WaivedFinding
{
    internal WaivedFinding(Finding finding, Waiver waiver)
    {
        this.Finding = finding;
        this.Waiver = waiver;
    }

    /// <summary>The finding.</summary>
    public Finding Finding { get; }

    /// <summary>The waiver.</summary>
    public Waiver Waiver { get; }

    /// <summary>The finding and who waived it, when and why.</summary>
    public override string ToString() =>
        $"{this.Finding} Waived by {this.Waiver.Person} on {ValidityPeriod.Day(this.Waiver.Granted)}: {this.Waiver.Reason}";
}
