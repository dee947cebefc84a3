using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>A loss law of a host's own: the linear one, slowed down by a factor.</summary>
internal sealed record OwnLaw(double Factor) : ILossLaw
{
    internal static LossLawForm Form { get; } = LossLawForm.Of<OwnLaw>(
        "slowed",
        static reader =>
        {
            double factor = reader.Number("factor");
            return reader.Make(() => new OwnLaw(factor));
        },
        static (writer, law) => writer.Number("factor", law.Factor));

    public string Name => FormattableString.Invariant($"slowed by {this.Factor}");

    public Basis Basis => Basis.Judgement("invented");

    public Length Loss(CorrosionRate firstYear, Duration time) => LinearLoss.Law.Loss(this.Slowed(firstYear), time);

    public Lifetime TimeToLoss(CorrosionRate firstYear, Length loss) => LinearLoss.Law.TimeToLoss(this.Slowed(firstYear), loss);

    public CorrosionRate RateAt(CorrosionRate firstYear, Duration time) => this.Slowed(firstYear);

    public Workings ShowTimeToLoss(CorrosionRate firstYear, Length loss) => LinearLoss.Law.ShowTimeToLoss(this.Slowed(firstYear), loss);

    private CorrosionRate Slowed(CorrosionRate rate) => CorrosionRate.FromMicrometersPerYear(this.Factor * rate.MicrometersPerYear);
}
