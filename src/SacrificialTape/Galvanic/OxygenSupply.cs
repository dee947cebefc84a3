using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>How much oxygen can reach a metal, and so how much cathodic current it can take.</summary>
public sealed record OxygenSupply
{
    private readonly StoredNumber amperesPerM2;
    private readonly StoredNumber share;

    private OxygenSupply(double amperesPerM2, double share)
    {
        this.amperesPerM2 = new StoredNumber(amperesPerM2);
        this.share = new StoredNumber(share);
    }

    /// <summary>As much as is asked for: the Tafel law all through.</summary>
    public static OxygenSupply Unlimited { get; } = new(double.PositiveInfinity, 0);

    /// <summary>As much as diffuses through a still film, which grows scarcer as the film thickens.</summary>
    public static OxygenSupply ThroughFilm { get; } = new(0, 1);

    /// <summary>Whether it follows from the thickness of the film.</summary>
    public bool FollowsFilm => this.share.Bare > 0;

    /// <summary>A limit that is known.</summary>
    /// <param name="limit">The most cathodic current density, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The limit is not positive.</exception>
    public static OxygenSupply Limited(ElectricCurrentDensity limit) =>
        new(AcceptedRange.Above(0, "A/m2").Check(UnitConversions.AmperesPerSquareMeter(limit), nameof(limit)), 0);

    /// <summary>A share of what diffuses through a still film: rust and zinc's corrosion products hold back the rest.</summary>
    /// <param name="share">More than 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public static OxygenSupply ShareOfFilm(double share) => new(0, AcceptedRange.AboveUpTo(0, 1, "").Check(share));

    internal double LimitUnder(ThinFilm film) => this.FollowsFilm
        ? this.share.Bare * GalvanicKernel.OxygenLimit(film.Um, default(Provenance.NoSteps))
        : this.amperesPerM2.Bare;
}
