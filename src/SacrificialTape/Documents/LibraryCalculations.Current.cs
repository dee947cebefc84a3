using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <content>Charge, current and coating breakdown.</content>
internal static partial class LibraryCalculations
{
    private static IEnumerable<CaseCalculation> Current() =>
    [
        Of("faraday.zinc-recession", "loss of zinc at a current density", [Given("current density", TradeUnit.AmperePerSquareMeter)],
            TradeUnit.MicrometerPerYear, static given => FaradayLaw.Recession(ElectricCurrentDensity.FromAmperesPerSquareMeter(given.In(TradeUnit.AmperePerSquareMeter, "current density")), Metal.Zinc).MicrometersPerYear),
        Of("anode.mass", "zinc that a mean current takes over a life", [Given("mean current", TradeUnit.Ampere), Given("life", TradeUnit.Year), Given("practical capacity", TradeUnit.AmpereHourPerKilogram), Number("utilisation")],
            TradeUnit.Kilogram, static given => new AnodeMass(
                PracticalCapacity.FromTest(ElectrochemicalCapacity.FromAmpereHoursPerKilogram(given.In(TradeUnit.AmpereHourPerKilogram, "practical capacity")), "stated by the case"), Utilisation.FromFraction(given.In(TradeUnit.One, "utilisation")),
                ElectricCurrent.FromAmperes(given.In(TradeUnit.Ampere, "mean current")),
                given["life"].ToDuration()).Mass.Kilograms),
        Of("flush-anode.resistance", "resistance of a flush anode", [Given("exposed area", TradeUnit.SquareMeter), Given("resistivity", TradeUnit.OhmMeter)],
            TradeUnit.Ohm, static given => new FlushAnode(
                given["exposed area"].ToArea(), ElectricResistivity.FromOhmMeters(given.In(TradeUnit.OhmMeter, "resistivity")), ElectricPotential.FromVolts(0.2)).Resistance.Ohms),
        Of("coating-breakdown.mean", "mean share of steel laid bare over a life", [Number("initial"), Number("yearly"), Given("life", TradeUnit.Year)],
            TradeUnit.One, static given => new CoatingBreakdown(BreakdownConstants.FromExperience(given.In(TradeUnit.One, "initial"), given.In(TradeUnit.One, "yearly"), "stated by the case"), given["life"].ToDuration()).Mean),
    ];
}
