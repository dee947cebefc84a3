using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Jobs;

/// <summary>
/// The lives of a job's lines. A survey names few tapes and few exposures on many lines: each combination is worked out
/// once and shared, since estimates do not change.
/// </summary>
internal sealed class LifeEstimates(RuleSet rules)
{
    private readonly Utilisation usable = Utilisation.FromFraction(rules.Number(RuleIds.UsableFraction, TradeUnit.One));
    private readonly Dictionary<Case, LifeEstimate> known = [];

    internal LifeEstimate Of(ILay lay, ZincExposure exposure)
    {
        var asked = new Case(lay.Stock.Tape.Foil, lay.LayersEverywhere, exposure);
        if (!this.known.TryGetValue(asked, out LifeEstimate? life))
        {
            life = new LifeEstimate(asked.Foil, asked.Layers, asked.Exposure, this.usable, LawsByMedium.For(asked.Exposure));
            this.known.Add(asked, life);
        }

        return life;
    }

    // By reference: a look at the meaning of foil and exposure would cost more than the estimate.
    private readonly struct Case(Foil foil, int layers, ZincExposure exposure) : IEquatable<Case>
    {
        internal Foil Foil { get; } = foil;

        internal int Layers { get; } = layers;

        internal ZincExposure Exposure { get; } = exposure;

        public bool Equals(Case other) => ReferenceEquals(this.Foil, other.Foil)
            && this.Layers == other.Layers
            && ReferenceEquals(this.Exposure, other.Exposure);

        public override bool Equals(object? obj) => obj is Case other && this.Equals(other);

        public override int GetHashCode() => HashCode.Combine(
            System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this.Foil),
            this.Layers,
            System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this.Exposure));
    }
}
