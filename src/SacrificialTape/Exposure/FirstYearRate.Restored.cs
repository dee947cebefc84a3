using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Exposure;

/// <summary>A rate of zinc as it was put on record, with all that was known of it.</summary>
public sealed partial record FirstYearRate
{
    internal ValueList<RateConcern> Concerns => this.concerns;

    /// <summary>Density of a coupon in kg/m3; null for what was not weighed.</summary>
    internal double? CouponDensity => this.weighedAt.IsSet ? this.weighedAt.Bare : null;

    /// <summary>Makes the rate anew, where its parts can belong together.</summary>
    /// <exception cref="ArgumentException">They cannot: the message says why.</exception>
    internal static FirstYearRate Restored(
        string name,
        ExposureMedium medium,
        RateRange range,
        Basis basis,
        (CorrosivityCategory? Category, SoilModel? Soil, LogNormalRate? LogNormal, double? CouponDensity) known,
        ValueList<RateConcern> concerns)
    {
        if (known.Category is { } category && (medium != ExposureMedium.Air || !range.Equals(Corrosivity.RatesOf(category, Metal.Zinc))))
        {
            throw new ArgumentException($"The rates of category {category} are {Corrosivity.RatesOf(category, Metal.Zinc)}, in air.", nameof(known));
        }

        if (known.LogNormal is { } spread && !range.Equals(spread.Range))
        {
            throw new ArgumentException($"Median and spread make a range of {spread.Range}.", nameof(known));
        }

        if (known.Soil is not null != (medium == ExposureMedium.Soil))
        {
            throw new ArgumentException("A model of soil belongs to the medium soil, and to no other.", nameof(medium));
        }

        foreach (RateConcern concern in concerns)
        {
            if (!RuleSet.Default.TryGet(concern.Rule, out _))
            {
                throw new ArgumentException($"The library knows no rule '{concern.Rule}'.", nameof(concerns));
            }

            if (concern.Rule == RuleIds.FirstYearTolerance && concern.Measured?.Key.Unit != TradeUnit.Year)
            {
                throw new ArgumentException($"A concern of rule '{concern.Rule}' states the time as 'measured'.", nameof(concerns));
            }
        }

        Density? density = known.CouponDensity is { } weighed
            ? Density.FromKilogramsPerCubicMeter(AcceptedRange.Above(0, "kg/m3").Check(weighed, "couponDensity"))
            : null;
        return new(Metal.Zinc, name, medium, range, basis, known.Category, known.LogNormal, concerns, density, known.Soil);
    }
}
