using FsCheck.Fluent;

namespace SacrificialTape.Tests.ServiceLife;

/// <summary>Everything about a life with its uncertainty that a law can vary.</summary>
public sealed record SpreadCase(
    double Median, double Sigma, double FoilUm, double ToleranceShare, double Usable, double UsableSpread, double Exponent, double Error, int Layers, double Confidence, int Kind)
{
    internal Foil Foil => new(Length.FromMicrometers(this.FoilUm), Length.FromMicrometers(this.FoilUm * this.ToleranceShare));

    internal Probability Sure => Probability.FromFraction(this.Confidence);

    internal UncertainRate Rate => Of(this.Median, this.Sigma);

    internal UncertainUtilisation Share
    {
        get
        {
            var least = Utilisation.FromFraction(this.Usable * (1 - this.UsableSpread));
            var most = Utilisation.FromFraction(Math.Min(1, this.Usable * (1 + this.UsableSpread)));
            return this.Kind % 2 == 0
                ? UncertainUtilisation.Uniform(least, most)
                : UncertainUtilisation.Triangular(least, Utilisation.FromFraction(this.Usable), most);
        }
    }

    internal LossGrowth Growth => (this.Kind / 2 % 4) switch
    {
        0 => LossGrowth.Linear,
        1 => LossGrowth.PowerLaw(this.Power, AfterTwentyYears.Power),
        2 => LossGrowth.Under(PiecewiseLoss.ZincInReinforcedSoil),
        _ => LossGrowth.PowerLaw(this.Power, AfterTwentyYears.Tangent),
    };

    internal LifeUncertainty Uncertainty => this.With(this.Rate);

    internal LifeDistribution Life => new(this.Foil, this.Layers, this.Uncertainty);

    private UncertainExponent Power => new(TimeExponent.FromValue(this.Exponent), this.Error, Basis.OwnExperience("made up"));

    internal LifeUncertainty With(UncertainRate rate) =>
        new(rate, this.Growth, this.Share, this.Kind % 3 == 0 ? ToleranceShape.Uniform : ToleranceShape.Triangular);

    internal static UncertainRate Of(double median, double sigma) => UncertainRate.Of(
        new LogNormalRate(CorrosionRate.FromMicrometersPerYear(median), LogSpread.FromValue(sigma)), Basis.OwnExperience("made up"));

    internal static FsCheck.Arbitrary<SpreadCase> Any() => (
        from median in Between(0.1, 10)
        from sigma in Between(0.02, 0.9)
        from foil in Between(30, 300)
        from tolerance in Between(0, 0.3)
        from usable in Between(0.4, 0.9)
        from spread in Between(0, 0.4)
        from exponent in Between(0.4, 0.95)
        from error in Between(0, 0.045)
        from layers in Gen.Choose(1, 4)
        from confidence in Between(0.01, 0.99)
        from kind in Gen.Choose(0, 47)
        select new SpreadCase(median, sigma, foil, tolerance, usable, spread, exponent, error, layers, confidence, kind)).ToArbitrary();

    private static FsCheck.Gen<double> Between(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(share => low + ((high - low) * share / 1_000_000));
}
