using SacrificialTape.Costing;
using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Short questions to the library through its public face, answers as plain numbers.</summary>
internal static class Ask
{
    /// <summary>How the absence of a category reads as a number: one above CX.</summary>
    internal const int AboveScheme = (int)CorrosivityCategory.CX + 1;

    internal static StripStock Stock(double widthMm, double foilUm = 100, double gramsPerCubicCentimeter = 7.14) => new(
        new Tape(
            new Foil(Length.FromMicrometers(foilUm), null, Density.FromGramsPerCubicCentimeter(gramsPerCubicCentimeter)),
            new Adhesive(Length.FromMillimeters(0.025))),
        Length.FromMillimeters(widthMm),
        Length.FromMeters(50));

    /// <summary>A stock whose foil has the density that the library gives zinc when none is stated.</summary>
    internal static StripStock PlainStock(double widthMm, double foilUm) => new(
        new Tape(new Foil(Length.FromMicrometers(foilUm)), new Adhesive(Length.FromMillimeters(0.025))),
        Length.FromMillimeters(widthMm),
        Length.FromMeters(50));

    internal static StraightPipe Pipe(double diameterMm, double lengthMm) =>
        new(Length.FromMillimeters(diameterMm), Length.FromMillimeters(lengthMm));

    internal static SpiralGeometry Spiral(double diameterMm, double widthMm, SpiralSetting setting) =>
        new(Length.FromMillimeters(diameterMm), Length.FromMillimeters(widthMm), setting);

    /// <summary>No lap of rings on themselves and a hand that does not wander: geometry and nothing else.</summary>
    internal static LayChoices Exact { get; } = new(Length.Zero, Length.Zero);

    internal static double CategoryOfUm(double micrometersPerYear, Metal metal) =>
        (int?)Corrosivity.CategoryOf(CorrosionRate.FromMicrometersPerYear(micrometersPerYear), metal) ?? AboveScheme;

    internal static double CategoryOfGrams(double gramsPerSquareMeterYear, Metal metal) =>
        (int?)Corrosivity.CategoryOf(MassLossRate.FromGramsPerSquareMeterYear(gramsPerSquareMeterYear), metal) ?? AboveScheme;

    internal static string CategoryName(double number) =>
        (int)number == AboveScheme ? "above CX" : ((CorrosivityCategory)(int)number).ToString();

    internal static double LossUm(ILossLaw law, double rate, double years) =>
        law.Loss(CorrosionRate.FromMicrometersPerYear(rate), Duration.FromYears365(years)).Micrometers;

    internal static double LifeYears(ILossLaw law, double zincUm, double rate) =>
        law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(rate), Length.FromMicrometers(zincUm)).Duration.Years365;

    internal static Lifetime Years(double years) => Lifetime.Of(Duration.FromYears365(years));

    internal static TimeValue Interest(double percent, int years) =>
        new(DiscountRate.FromFractionPerYear(percent / 100), Years(years));
}
