using SacrificialTape.Costing;
using SacrificialTape.Exposure;
using SacrificialTape.Inspection;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
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

    /// <summary>What a plain line of tape says of hazards; of its life it says what it always says.</summary>
    internal static ValueList<Finding> Findings(LineHazards hazards) => new Job(
        "check",
        [
            new SurveyLine(
                "check",
                new RingLay(Pipe(168.3, 6000), Stock(100), Length.FromMillimeters(20)),
                ZincExposure.FromCategory(CorrosivityCategory.C3),
                Years(1),
                new SteelCondition(hazards: hazards)),
        ],
        new TakeOffChoices(Length.FromMillimeters(10), Length.FromMeters(1), Contingency.FromFraction(0))).Estimate().Lines[0].Findings;

    /// <summary>A linear life of foil of 100 um down to 20 um.</summary>
    internal static RemainingLifeFromReadings LifeFromReadings(ReadingStatistics readings, double years, double confidence) => new(
        new Foil(Length.FromMicrometers(100)),
        readings,
        Duration.FromYears365(years),
        Length.FromMicrometers(20),
        LinearLoss.Law,
        Probability.FromFraction(0.9),
        Probability.FromFraction(confidence));

    internal static TimeValue Interest(double percent, int years) =>
        new(DiscountRate.FromFractionPerYear(percent / 100), Years(years));
}
