using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Design figures of anodes and worked examples, in the units of their sources.</summary>
internal static class AnodeDesignChecks
{
    private const double SquareFoot = 0.09290304;
    private const double Pound = 0.45359237;

    internal static CheckGroup Group => new(
        "Anodes: capacity, demand, breakdown, worked examples",
        "Tables as printed (or recalled), and worked designs in pounds and milliamperes per square foot. No printed design with zinc was found; the formula is the same for any metal.",
        [.. Capacities(), .. Drive(), .. Demand(), .. Breakdown(), .. Examples(), .. Criteria()]);

    private static IEnumerable<PublishedCase> Capacities()
    {
        foreach ((string id, PracticalCapacity capacity, SourceReference source, double expected, double divide, string unit) in new[]
        {
            ("dnv-seawater", PracticalCapacity.DnvSeawater, References.DnvCathodicProtection, 780.0, 1.0, "A.h/kg"),
            ("dnv-sediment", PracticalCapacity.DnvSediment, References.DnvCathodicProtection, 700, 1, "A.h/kg"),
            ("iso-seawater", PracticalCapacity.IsoSeawater, References.PipelineAnodes, 780, 1, "A.h/kg"),
            ("iso-buried", PracticalCapacity.IsoBuried, References.PipelineAnodes, 750, 1, "A.h/kg"),
            ("bs-7361", PracticalCapacity.BritishStandard, References.BritishCathodicProtection, 780, 1, "A.h/kg"),
            ("handbook", PracticalCapacity.HandbookSeawater, References.PipelineHandbook, 354, 1 / Pound, "A.h/lb"),
            ("ninety-percent", PracticalCapacity.NinetyPercent, References.AnodeCourseTable, 335, 1 / Pound, "A.h/lb"),
        })
        {
            yield return Case("capacity-" + id, "practical capacity, " + capacity.Name, Evidence.From(source), expected, 1e-9, unit, () => capacity.Capacity.AmpereHoursPerKilogram / divide);
        }

        yield return Case("ninety-percent-is-ninety", "335 A.h/lb over the theoretical capacity", Evidence.From(References.AnodeCourseTable, "said to be 90 %"), 0.90, 0.005, "1", static () =>
            PracticalCapacity.NinetyPercent.Capacity.AmpereHoursPerKilogram / TheoreticalCapacity.Zinc.Capacity.AmpereHoursPerKilogram);
        yield return Case("bs-7361-consumption", "8760/780, kept below the 11.25 of the code", Evidence.From(References.BritishCathodicProtection), 11.25, 0.03, "kg/(A.a)", static () =>
            new AnodeMass(PracticalCapacity.BritishStandard, Utilisation.FromFraction(1), ElectricCurrent.FromAmperes(1), Duration.FromYears365(1)).Mass.Kilograms);
        foreach ((AnodeShape shape, double expected) in new[]
        {
            (AnodeShape.LongStandOff, 0.90), (AnodeShape.ShortStandOff, 0.85), (AnodeShape.LongFlush, 0.85), (AnodeShape.ShortFlushBraceletOrOther, 0.80),
        })
        {
            yield return Case($"utilisation-{shape}".ToLowerInvariant(), $"utilisation, {shape}", Evidence.From(References.DnvCathodicProtection), expected, 0, "1", () => AnodeUtilisation.Of(shape).Fraction);
        }
    }

    private static IEnumerable<PublishedCase> Drive()
    {
        foreach ((double volts, double factor) in new[] { (-0.70, 1.60), (-0.80, 1.20), (-0.85, 1.00), (-0.90, 0.80), (-1.00, 0.40), (-1.10, 0), (-1.20, 0) })
        {
            yield return Case(
                FormattableString.Invariant($"driving-factor{volts:0.00}"), FormattableString.Invariant($"driving-voltage factor of zinc, steel at {volts:0.00} V CSE"),
                Evidence.From(References.DrivingVoltageFactors), factor, 1e-9, "1", () => new DrivingVoltage(Cse(volts)).Factor);
        }

        yield return Case("driving-voltage", "driving voltage of zinc to protected steel", Evidence.From(References.PipelineHandbook), 0.25, 1e-9, "V", static () => new DrivingVoltage(Cse(-0.85)).Voltage.Volts);
        yield return Case("reference-ssc", "-0.85 V CSE against silver chloride", Evidence.From(References.PipelineHandbook), -0.78, 1e-9, "V", static () => Cse(-0.85).Against(ReferenceElectrode.SilverChlorideSeawater).Volts);
        yield return Case("reference-sce", "-0.85 V CSE against calomel", Evidence.From(References.PipelineHandbook), -0.776, 1e-9, "V", static () => Cse(-0.85).Against(ReferenceElectrode.Calomel).Volts);
    }

    private static IEnumerable<PublishedCase> Demand()
    {
        foreach ((DemandMedium medium, double low, double high) in new[]
        {
            (DemandMedium.SoilBelow1000OhmCm, 6.0, 25.0), (DemandMedium.Soil1000To10000OhmCm, 3, 6), (DemandMedium.Soil10000To30000OhmCm, 2, 3), (DemandMedium.SoilAbove30000OhmCm, 1, 2),
            (DemandMedium.SoilWithBacteria, 15, 40), (DemandMedium.FreshWaterStill, 2, 4), (DemandMedium.FreshWaterMoving, 4, 6), (DemandMedium.FreshWaterTurbulentOrHot, 5, 15),
            (DemandMedium.SeawaterStill, 1, 3), (DemandMedium.SeawaterMoving, 3, 25), (DemandMedium.Concrete, 0.5, 1.5),
        })
        {
            CurrentDemand demand = CurrentDemand.Of(medium);
            yield return Case($"demand-{medium}-low".ToLowerInvariant(), $"{demand.Name}, lowest", Evidence.From(References.CurrentRequirements), low, 1e-9, "mA/ft2", () => demand.Lowest.AmperesPerSquareMeter * 1000 * SquareFoot);
            yield return Case($"demand-{medium}-high".ToLowerInvariant(), $"{demand.Name}, highest", Evidence.From(References.CurrentRequirements), high, 1e-9, "mA/ft2", () => demand.Highest.AmperesPerSquareMeter * 1000 * SquareFoot);
        }

        (double Initial, double Mean, double Final)[] marine = [(220, 100, 130), (180, 90, 120), (150, 80, 100), (130, 70, 90), (110, 60, 80), (400, 400, 400), (25, 20, 20)];
        for (int i = 0; i < marine.Length; i++)
        {
            MarineDemand row = MarineDemand.Published[i];
            yield return Case($"marine-{i}-initial", row.Region + ", start", Evidence.From(References.ClassRulesProtection), marine[i].Initial, 1e-9, "mA/m2", () => row.Initial.AmperesPerSquareMeter * 1000);
            yield return Case($"marine-{i}-mean", row.Region + ", mean", Evidence.From(References.ClassRulesProtection), marine[i].Mean, 1e-9, "mA/m2", () => row.Mean.AmperesPerSquareMeter * 1000);
            yield return Case($"marine-{i}-final", row.Region + ", end", Evidence.From(References.ClassRulesProtection), marine[i].Final, 1e-9, "mA/m2", () => row.Final.AmperesPerSquareMeter * 1000);
        }

        yield return Case("oxygen-100", "oxygen limit through 100 um", Evidence.FirstPrinciples("4 x 96485 x 2e-9 x 0.26/1e-4", References.OxygenInWater), 2.0, 0.05, "A/m2", static () => new OxygenLimit(Length.FromMicrometers(100)).Limit.AmperesPerSquareMeter);
        yield return Case("oxygen-500", "oxygen limit through 500 um", Evidence.FirstPrinciples("4 x 96485 x 2e-9 x 0.26/5e-4", References.OxygenInWater), 0.40, 0.005, "A/m2", static () => new OxygenLimit(Length.FromMicrometers(500)).Limit.AmperesPerSquareMeter);
    }

    private static IEnumerable<PublishedCase> Breakdown()
    {
        foreach ((string id, BreakdownConstants constants, double a, double b) in new[]
        {
            ("1-shallow", BreakdownConstants.CategoryOneShallow, 0.10, 0.10), ("1-deep", BreakdownConstants.CategoryOneDeep, 0.10, 0.05),
            ("2-shallow", BreakdownConstants.CategoryTwoShallow, 0.05, 0.025), ("2-deep", BreakdownConstants.CategoryTwoDeep, 0.05, 0.015),
            ("3-shallow", BreakdownConstants.CategoryThreeShallow, 0.02, 0.012), ("3-deep", BreakdownConstants.CategoryThreeDeep, 0.02, 0.008),
        })
        {
            yield return Case($"breakdown-{id}-a", constants.Name + ", a", Evidence.From(References.DnvCathodicProtection), a, 0, "1", () => constants.Initial);
            yield return Case($"breakdown-{id}-b", constants.Name + ", b", Evidence.From(References.DnvCathodicProtection), b, 0, "1", () => constants.Yearly);
        }

        CoatingBreakdown Over(BreakdownConstants constants, double years) => new(constants, Duration.FromYears365(years));
        yield return Case("breakdown-mean", "a 0.02, b 0.012, 30 a: mean", Evidence.FromFormula(References.OffshoreStructures, "0.02 + 0.006 x 30"), 0.2, 1e-12, "1", () => Over(BreakdownConstants.CategoryThreeShallow, 30).Mean);
        yield return Case("breakdown-final", "a 0.02, b 0.012, 30 a: end", Evidence.FromFormula(References.OffshoreStructures, "0.02 + 0.012 x 30"), 0.38, 1e-12, "1", () => Over(BreakdownConstants.CategoryThreeShallow, 30).Final);
        yield return Case("breakdown-capped-mean", "a 0.10, b 0.10, 20 a: mean", Evidence.FromFormula(References.OffshoreStructures, "1 - 0.81/4"), 0.7975, 1e-12, "1", () => Over(BreakdownConstants.CategoryOneShallow, 20).Mean);
        yield return Case("breakdown-capped-final", "a 0.10, b 0.10, 20 a: end", Evidence.FromFormula(References.OffshoreStructures, "2.1, and then 1"), 1, 0, "1", () => Over(BreakdownConstants.CategoryOneShallow, 20).Final);
    }

    private static IEnumerable<PublishedCase> Examples()
    {
        Evidence military = Evidence.From(References.MilitaryAnodeMass);
        yield return Case("page-198", "15 a, 8.8 lb/(A.a), 0.73 A, efficiency 0.50", military, 193, 0.5, "lb", static () => PoundsOf(15, 8.8, 0.73, 0.5));
        yield return Case("page-158-current", "7588 ft2 at 2.0 mA/ft2", military, 15.176, 0.0005, "A", static () => CurrentDemand.Of(DemandMedium.FreshWaterStill).Lowest.AmperesPerSquareMeter * 7588 * SquareFoot);
        yield return Case("page-159", "10 a, 1.0 lb/(A.a), 15.2 A, efficiency 0.50", military, 304, 0.5, "lb", static () => PoundsOf(10, 1.0, 15.2, 0.5));
        yield return Case("page-209", "10 a, 7.6 lb/(A.a) with efficiency, 14.7 A", military, 1117.2, 0.05, "lb", static () => PoundsOf(10, 7.6, 14.7, 1));
        yield return Case("z1", "100 m2, 0.10 A/m2, breakdown 0.20, 30 a, utilisation 0.80, 780 A.h/kg", Evidence.FromFormula(References.FlushAnodeResistance, "2.00 A x 30 x 8760/(0.80 x 780)"), 842.3, 0.05, "kg", static () =>
            new AnodeMass(PracticalCapacity.DnvSeawater, Utilisation.FromFraction(0.8), ElectricCurrent.FromAmperes(100 * 0.1 * 0.2), Duration.FromYears365(30)).Mass.Kilograms);
        yield return Case("peabody", "life of 100 lb of zinc at 1 A, efficiency 0.9, utilisation 0.85", Evidence.From(Sources.AnodeLifeFormula, "0.0424 x 100 x 0.9 x 0.85"), 3.243, 0.02, "a", static () =>
            AnodeLife.ByConsumption(Mass.FromPounds(100), TheoreticalCapacity.Zinc.Consumption, CurrentEfficiency.FromFraction(0.9), Utilisation.FromFraction(0.85), ElectricCurrent.FromAmperes(1)).Life.Duration.Years365);
        yield return Case("z3", "foil 0.100 mm, 7130 kg/m3, utilisation 0.80, 780 A.h/kg, 0.010 A for each m2 of zinc", Evidence.FirstPrinciples("0.713 kg/m2 x 0.8 x 780/(0.010 x 8760)"), 5.08, 0.005, "a", static () => new HolidayLife(
            new Foil(Length.FromMillimeters(0.1), null, Density.FromKilogramsPerCubicMeter(7130)),
            ZincFeed.BesideMargin(Length.FromMillimeters(10), Length.FromMillimeters(10)),
            Measured(0.010),
            new DemandAtPracticalCapacity(PracticalCapacity.DnvSeawater),
            Utilisation.FromFraction(0.8)).Earliest.Duration.Years365);
        var flush = new FlushAnode(Area.FromSquareMeters(0.25), ElectricResistivity.FromOhmMeters(0.30), ElectricPotential.FromVolts(0.2));
        yield return Case("z4-resistance", "flush anode, 0.30 ohm.m, 0.25 m2", Evidence.FromFormula(References.FlushAnodeResistance, "0.315 x 0.30/0.5"), 0.189, 1e-12, "ohm", () => flush.Resistance.Ohms);
        yield return Case("z4-current", "its current at 0.20 V", Evidence.FromFormula(References.FlushAnodeResistance, "0.20/0.189"), 1.058, 0.0005, "A", () => flush.Current.Amperes);
        yield return Case("holiday-root", "own loss 2.1 t^0.813 and demand 10 um/a use up 80 um", Evidence.ComputedElsewhere("root in 30-digit arithmetic of another language", References.PowerLawExponents), 6.98068502741721, 1e-12, "a", static () => HolidayOf(10).Earliest.Duration.Years365);
    }

    private static IEnumerable<PublishedCase> Criteria()
    {
        foreach ((string id, ProtectionCriterion criterion, SourceReference source, double expected) in new[]
        {
            ("soil", ProtectionCriterion.SoilOrWater, References.ProtectionCriteria, -0.85),
            ("anaerobic", ProtectionCriterion.Anaerobic, References.BuriedPipelineCriteria, -0.95),
            ("seawater", ProtectionCriterion.SeawaterAerated, References.SeawaterCriteria, -0.80),
            ("seawater-anaerobic", ProtectionCriterion.SeawaterAnaerobic, References.SeawaterCriteria, -0.90),
            ("high-strength", ProtectionCriterion.HighStrengthSteel, References.SeawaterCriteria, -0.83),
            ("beside-zinc", ProtectionCriterion.SheetBesideZinc, References.GalvanicCoatingCriterion, -0.725),
        })
        {
            yield return Case("criterion-" + id, $"criterion, {criterion.Name}", Evidence.From(source), expected, 0, "V", () => criterion.AtOrBelow!.Value.Volts);
        }

        yield return Case("criterion-shift", "polarisation", Evidence.From(References.ProtectionCriteria), 0.1, 0, "V", static () => ProtectionCriterion.HundredMillivoltShift.Shift!.Value.Volts);
        yield return Case("criterion-lowest", "high-strength steel, not below", Evidence.From(References.SeawaterCriteria), -0.95, 0, "V", static () => ProtectionCriterion.HighStrengthSteel.NotBelow!.Value.Volts);
    }

    // A demand that takes so many um a year from zinc beside an equal width of bare steel.
    private static HolidayLife HolidayOf(double micrometersPerYear)
    {
        double amperes = micrometersPerYear * 1e-6 * 7140 * TheoreticalCapacity.Zinc.Capacity.AmpereHoursPerKilogram / 8760;
        return new HolidayLife(
            new Foil(Length.FromMillimeters(0.1)),
            ZincFeed.BesideMargin(Length.FromMillimeters(7), Length.FromMillimeters(7)),
            Measured(amperes),
            new OwnCorrosionAndDemand(
                TheoreticalCapacity.Zinc,
                Exposure.ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(2.1), "made up"),
                PowerLawLoss.ZincMean),
            Utilisation.FromFraction(0.8));
    }

    private static CurrentDemand Measured(double amperesPerM2) => CurrentDemand.FromMeasurement(
        ElectricCurrentDensity.FromAmperesPerSquareMeter(amperesPerM2), ElectricCurrentDensity.FromAmperesPerSquareMeter(amperesPerM2), "made up");

    private static ElectrodePotential Cse(double volts) => ElectrodePotential.FromVolts(volts, ReferenceElectrode.CopperSulfate);

    private static double PoundsOf(double years, double poundsPerAmpereYear, double amperes, double efficiency) => AnodeMass.ByConsumption(
        AnodeConsumption.FromPoundsPerAmpereYear(poundsPerAmpereYear),
        CurrentEfficiency.FromFraction(efficiency),
        Utilisation.FromFraction(1),
        ElectricCurrent.FromAmperes(amperes),
        Duration.FromYears365(years)).Mass.Pounds;

    private static PublishedCase Case(string id, string what, Evidence evidence, double expected, double tolerance, string unit, Func<double> compute) => new()
    {
        Id = "anode/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
