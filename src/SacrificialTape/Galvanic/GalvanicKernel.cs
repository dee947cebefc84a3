using System.Runtime.CompilerServices;
using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>Charge, mass, demand and driving voltage in doubles.</summary>
internal static class GalvanicKernel
{
    /// <summary>n F / (3600 s/h M), in A.h/kg from g/mol.</summary>
    internal static double Capacity<TSteps>(double electrons, double coulombPerMole, double gramPerMole, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double capacity = electrons * coulombPerMole / (3.6 * gramPerMole);
        if (TSteps.Records)
        {
            steps.Add(GalvanicFormulas.Capacity, [electrons, coulombPerMole, gramPerMole], capacity);
        }

        return capacity;
    }

    /// <summary>That of zinc, the same operations as <see cref="TheoreticalCapacity.Zinc"/>.</summary>
    internal static double ZincCapacity() => Capacity(
        GalvanicTables.ZincElectrons, GalvanicTables.FaradayCoulombPerMole, GalvanicTables.ZincGramPerMole, default(NoSteps));

    /// <summary>8760 h / capacity, kg/(A.a).</summary>
    internal static double Consumption<TSteps>(double ampereHoursPerKilogram, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double consumption = UnitConversions.HoursPerYear / ampereHoursPerKilogram;
        if (TSteps.Records)
        {
            steps.Add(GalvanicFormulas.Consumption, [ampereHoursPerKilogram], consumption);
        }

        return consumption;
    }

    /// <summary>um/a from A/m2: 1e6 x 31 536 000 s x i M / (1000 n F rho).</summary>
    internal static double Recession(double amperesPerM2, double gramPerMole, double kilogramsPerM3) =>
        31_536_000_000 * amperesPerM2 * gramPerMole / (2 * GalvanicTables.FaradayCoulombPerMole * kilogramsPerM3);

    /// <summary>The same in lanes; not a number where the current is not finite or below zero, or the density not above zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes Recession<TLanes>(TLanes amperesPerM2, Metal metal, TLanes kilogramsPerM3)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(
            (amperesPerM2 >= 0) & (amperesPerM2 <= double.MaxValue) & (kilogramsPerM3 > 0) & (kilogramsPerM3 <= double.MaxValue),
            31_536_000_000 * amperesPerM2 * GalvanicTables.Metal(metal).GramPerMole / (2 * GalvanicTables.FaradayCoulombPerMole * kilogramsPerM3),
            double.NaN);

    /// <summary>g/(m2.a) from A/m2.</summary>
    internal static double MassLoss(double amperesPerM2, double gramPerMole) =>
        31_536_000 * amperesPerM2 * gramPerMole / (2 * GalvanicTables.FaradayCoulombPerMole);

    /// <summary>The same in lanes; not a number where the current is not finite or below zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes MassLoss<TLanes>(TLanes amperesPerM2, Metal metal)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(
            (amperesPerM2 >= 0) & (amperesPerM2 <= double.MaxValue),
            31_536_000 * amperesPerM2 * GalvanicTables.Metal(metal).GramPerMole / (2 * GalvanicTables.FaradayCoulombPerMole),
            double.NaN);

    /// <summary>The inverse of recession, um/a to A/m2.</summary>
    internal static double CurrentOfRecession(double micrometersPerYear, double gramPerMole, double kilogramsPerM3) =>
        micrometersPerYear * 2 * GalvanicTables.FaradayCoulombPerMole * kilogramsPerM3 / (31_536_000_000 * gramPerMole);

    internal static double Shift(ReferenceElectrode from, ReferenceElectrode to) =>
        GalvanicTables.OffsetFromCopperSulfate(to) - GalvanicTables.OffsetFromCopperSulfate(from);

    internal static double OtherReference(double volts, ReferenceElectrode from, ReferenceElectrode to) => volts + Shift(from, to);

    /// <summary>E - E_zinc, V.</summary>
    internal static double DrivingVoltage<TSteps>(double structureV, double zincV, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double drive = structureV - zincV;
        if (TSteps.Records)
        {
            steps.Add(GalvanicFormulas.DrivingVoltage, [structureV, zincV], drive);
        }

        return drive;
    }

    /// <summary>Driving voltage over the usual 0.25 V, and nothing where zinc no longer drives.</summary>
    internal static double DrivingFactor<TSteps>(double drive, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double factor = Math.Max(0, drive / GalvanicTables.UsualDrivingVoltage);
        if (TSteps.Records)
        {
            steps.Add(GalvanicFormulas.DrivingFactor, [drive, GalvanicTables.UsualDrivingVoltage], factor);
        }

        return factor;
    }

    /// <summary>4 F D c / delta, A/m2 from um.</summary>
    internal static double OxygenLimit<TSteps>(double filmUm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double limit = GalvanicTables.OxygenElectrons * GalvanicTables.FaradayCoulombPerMole * GalvanicTables.OxygenDiffusivity
            * GalvanicTables.OxygenConcentration * 1e6 / filmUm;
        if (TSteps.Records)
        {
            steps.Add(
                GalvanicFormulas.OxygenLimit,
                [GalvanicTables.FaradayCoulombPerMole, GalvanicTables.OxygenDiffusivity, GalvanicTables.OxygenConcentration, filmUm],
                limit);
        }

        return limit;
    }

    /// <summary>a + b t, and 1 once it would be more: the whole surface is bare then.</summary>
    internal static double FinalBreakdown<TSteps>(double initial, double yearly, double years, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double final = Math.Min(1, initial + (yearly * years));
        if (TSteps.Records)
        {
            steps.Add(GalvanicFormulas.FinalBreakdown, [initial, yearly, years], final);
        }

        return final;
    }

    /// <summary>a + b t/2, or 1 - (1 - a)^2/(2 b t) once the cap at 1 is reached.</summary>
    internal static double MeanBreakdown<TSteps>(double initial, double yearly, double years, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        bool capped = initial + (yearly * years) > 1;
        double mean = capped
            ? 1 - ((1 - initial) * (1 - initial) / (2 * yearly * years))
            : initial + (yearly * years / 2);
        if (TSteps.Records)
        {
            steps.Add(capped ? GalvanicFormulas.MeanBreakdownCapped : GalvanicFormulas.MeanBreakdown, [initial, yearly, years], mean);
        }

        return mean;
    }

    /// <summary>R = 0.315 rho / sqrt(A), ohm.</summary>
    internal static double FlushResistance<TSteps>(double ohmM, double areaM2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double resistance = 0.315 * ohmM / Math.Sqrt(areaM2);
        if (TSteps.Records)
        {
            steps.Add(GalvanicFormulas.FlushResistance, [ohmM, areaM2], resistance);
        }

        return resistance;
    }

    /// <summary>I = V / R, A.</summary>
    internal static double FlushCurrent<TSteps>(double drive, double ohm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double current = drive / ohm;
        if (TSteps.Records)
        {
            steps.Add(GalvanicFormulas.FlushCurrent, [drive, ohm], current);
        }

        return current;
    }

    /// <summary>C f y / (10^5 P) in A, from mA.ohm.cm and ohm.m.</summary>
    internal static double SoilAnodeOutput<TSteps>(double constant, double size, double potential, double ohmM, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double amperes = constant * size * potential / (100_000 * ohmM);
        if (TSteps.Records)
        {
            steps.Add(GalvanicFormulas.SoilAnodeOutput, [constant, size, potential, ohmM], amperes);
        }

        return amperes;
    }

    /// <summary>Whole anodes for a demand.</summary>
    internal static double AnodeNumber<TSteps>(double demand, double each, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double number = WithAllowance.Ceiling(demand / each);
        if (TSteps.Records)
        {
            steps.Add(GalvanicFormulas.AnodeNumber, [demand, each], number);
        }

        return number;
    }
}
