using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;

namespace SacrificialTape.Jobs;

/// <summary>
/// The lives of a job's lines. A survey names few tapes and few exposures on many lines: each combination is worked out
/// once and shared, since estimates do not change.
/// </summary>
internal sealed class LifeEstimates(RuleSet rules)
{
    private readonly Utilisation usable = Utilisation.FromFraction(rules.Number(RuleIds.UsableFraction, TradeUnit.One));
    private readonly Dictionary<Case, LifeEstimate> known = [];

    internal LifeEstimate Of(SurveyLine line)
    {
        var asked = new Case(line.Lay.Stock.Tape.Foil, line.Lay.LayersEverywhere, line.Exposure, line.Laws);
        if (!this.known.TryGetValue(asked, out LifeEstimate? life))
        {
            life = new LifeEstimate(asked.Foil, asked.Layers, asked.Exposure, this.usable, asked.Laws ?? LawsByMedium.For(asked.Exposure));
            this.known.Add(asked, life);
        }

        return life;
    }

    // By reference: a look at the meaning of foil, exposure and laws would cost more than the estimate.
    private readonly struct Case(Foil foil, int layers, ZincExposure exposure, ValueList<ILossLaw>? laws) : IEquatable<Case>
    {
        internal Foil Foil { get; } = foil;

        internal int Layers { get; } = layers;

        internal ZincExposure Exposure { get; } = exposure;

        internal ValueList<ILossLaw>? Laws { get; } = laws;

        public bool Equals(Case other) => ReferenceEquals(this.Foil, other.Foil)
            && this.Layers == other.Layers
            && ReferenceEquals(this.Exposure, other.Exposure)
            && ReferenceEquals(this.Laws, other.Laws);

        public override bool Equals(object? obj) => obj is Case other && this.Equals(other);

        public override int GetHashCode() => HashCode.Combine(
            System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this.Foil),
            this.Layers,
            System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this.Exposure),
            this.Laws is null ? 0 : System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this.Laws));
    }
}
