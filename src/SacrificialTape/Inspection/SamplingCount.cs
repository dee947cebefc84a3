using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>How many thickness readings a document asks for on an area.</summary>
/// <remarks>
/// Area: more than 0, at most 1 000 000 m2; AS 3894.3: from 10 m2, since its smaller sizes were not read clearly. All four
/// documents are written for paint; using one on tape is a choice to be stated. On zinc tape the gauge reads metal and
/// adhesive and counts lapped layers, and a magnetic gauge needs steel under it.
/// </remarks>
public sealed record SamplingCount : IHasWorkings
{
    private readonly StoredNumber m2;

    /// <summary>Describes a count.</summary>
    /// <param name="scheme">The document.</param>
    /// <param name="area">The area.</param>
    /// <exception cref="ArgumentOutOfRangeException">The area is outside its range, or there is no such document.</exception>
    public SamplingCount(SamplingScheme scheme, Area area)
    {
        this.Scheme = Enum.IsDefined(scheme)
            ? scheme
            : throw new ArgumentOutOfRangeException(nameof(scheme), scheme, "Not a sampling scheme known here.");
        AcceptedRange range = scheme == SamplingScheme.As38943
            ? AcceptedRange.Between(10, 1_000_000, "m2").Noting("smaller sizes of AS 3894.3 were not read clearly; take another document")
            : AcceptedRange.AboveUpTo(0, 1_000_000, "m2");
        this.m2 = new StoredNumber(range.Check(UnitConversions.SquareMeters(area), nameof(area)));
    }

    /// <summary>The document.</summary>
    public SamplingScheme Scheme { get; }

    /// <summary>The area.</summary>
    public Area Area => Area.FromSquareMeters(this.m2.Bare);

    /// <summary>How many readings; for <see cref="SamplingScheme.SspcPa2"/> spots, each the mean of <see cref="GaugeReadingsEach"/>.</summary>
    public int Readings => (int)this.Solve(default(NoSteps));

    /// <summary>Readings of the gauge for each: 3 for a spot of SSPC-PA 2, else 1.</summary>
    public int GaugeReadingsEach => this.Scheme == SamplingScheme.SspcPa2 ? 3 : 1;

    /// <summary>The document as the trade writes it.</summary>
    public string SchemeName => this.Scheme switch
    {
        SamplingScheme.Iso19840 => "ISO 19840",
        SamplingScheme.SspcPa2 => "SSPC-PA 2",
        SamplingScheme.As38943 => "AS 3894.3",
        _ => "IMO PSPC",
    };

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under($"Readings by {this.SchemeName}, a paint document used by choice");
    }

    /// <summary>How many, by which document, and that it is one for paint.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Readings} {(this.GaugeReadingsEach == 3 ? "spots of 3 readings" : "readings")} on {this.m2.Bare:0.##} m2 by {this.SchemeName} (a paint document, used by choice)");

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => this.Scheme switch
        {
            SamplingScheme.Iso19840 => SamplingKernel.Iso19840(this.m2.Bare, steps),
            SamplingScheme.SspcPa2 => SamplingKernel.SspcPa2(this.m2.Bare, steps),
            SamplingScheme.As38943 => SamplingKernel.As38943(this.m2.Bare, steps),
            _ => SamplingKernel.ImoPspc(this.m2.Bare, steps),
        };
}
