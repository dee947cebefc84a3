using System.Runtime.CompilerServices;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Contact;

/// <summary>Resistance and voltage lost between zinc and steel, in doubles: ohm, ohm.cm2, mm, cm2, A, V.</summary>
internal static class VoltageKernel
{
    private const double MetresPerUm = 0.000001;

    internal static double AtTemperature<TSteps>(double ohmM, double degC, TSteps steps)
        where TSteps : struct, IStepRecorder =>
        Noted(VoltageFormulas.AtTemperature, [ohmM, degC], ohmM * (1 + (0.0037 * (degC - 20))), steps);

    internal static double SheetOhm<TSteps>(double ohmM, double um, TSteps steps)
        where TSteps : struct, IStepRecorder =>
        Noted(VoltageFormulas.SheetResistance, [ohmM, um], ohmM / (um * MetresPerUm), steps);

    internal static double TwoMetalSpotOhm<TSteps>(double oneOhmM, double otherOhmM, double um, TSteps steps)
        where TSteps : struct, IStepRecorder =>
        Noted(VoltageFormulas.TwoMetalSpot, [oneOhmM, otherOhmM, um], (oneOhmM + otherOhmM) / (4 * um * MetresPerUm), steps);

    internal static double FarApartOhm<TSteps>(double ohmM, double sumUm, TSteps steps)
        where TSteps : struct, IStepRecorder =>
        Noted(VoltageFormulas.SpotsFarApart, [ohmM, sumUm], ohmM / (2 * sumUm * MetresPerUm), steps);

    internal static double HolmOhm<TSteps>(double ohmM, double sumUm, int count, double spacingUm, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(
            VoltageFormulas.SpotsHolm,
            [ohmM, sumUm, count, spacingUm],
            FarApartOhm(ohmM, sumUm, default(NoSteps)) + (3 * Math.PI * ohmM / (32.0 * count * count * spacingUm * MetresPerUm)),
            steps);

    internal static double GreenwoodOhm<TSteps>(double ohmM, double sumUm, int count, double spacingUm, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(
            VoltageFormulas.SpotsGreenwood,
            [ohmM, sumUm, count, spacingUm],
            FarApartOhm(ohmM, sumUm, default(NoSteps)) + (ohmM / (Math.PI * count * count * spacingUm * MetresPerUm)),
            steps);

    internal static double CouponOhmCm2<TSteps>(double ohm, double cm2, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(VoltageFormulas.Coupon, [ohm, cm2], ohm * cm2, steps);

    internal static double AdhesiveOhm<TSteps>(double ohmCm2, double cm2, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(VoltageFormulas.Adhesive, [ohmCm2, cm2], ohmCm2 / cm2, steps);

    internal static double DiscToRingOhm<TSteps>(double sheetOhm, double ringMm, double discMm, TSteps steps)
        where TSteps : struct, IStepRecorder =>
        Noted(VoltageFormulas.DiscToRing, [sheetOhm, ringMm, discMm], sheetOhm / (2 * Math.PI) * Math.Log(ringMm / discMm), steps);

    internal static double TwoDiscsOhm<TSteps>(double sheetOhm, double apartMm, double discMm, TSteps steps)
        where TSteps : struct, IStepRecorder =>
        Noted(VoltageFormulas.TwoDiscs, [sheetOhm, apartMm, discMm], sheetOhm / Math.PI * Math.Acosh(apartMm / (2 * discMm)), steps);

    internal static double TwoSmallDiscsOhm<TSteps>(double sheetOhm, double apartMm, double discMm, TSteps steps)
        where TSteps : struct, IStepRecorder =>
        Noted(VoltageFormulas.TwoSmallDiscs, [sheetOhm, apartMm, discMm], sheetOhm / Math.PI * Math.Log(apartMm / discMm), steps);

    internal static double StripOhm<TSteps>(double sheetOhm, double lengthMm, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder =>
        Noted(VoltageFormulas.Strip, [sheetOhm, lengthMm, widthMm], sheetOhm * lengthMm / widthMm, steps);

    internal static double DistributedV<TSteps>(double amperesPerM2, double sheetOhm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(
            VoltageFormulas.Distributed,
            [amperesPerM2, sheetOhm, lengthMm],
            amperesPerM2 * sheetOhm * (lengthMm / 1000) * (lengthMm / 1000) / 2,
            steps);

    internal static double TransferMm<TSteps>(double ohmCm2, double sheetOhm, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(VoltageFormulas.TransferLength, [ohmCm2, sheetOhm], 10 * Math.Sqrt(ohmCm2 / sheetOhm), steps);

    internal static double LongJointOhm<TSteps>(double sheetOhm, double ohmCm2, double widthMm, double lengthMm, double transferMm, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(
            VoltageFormulas.LongJoint,
            [sheetOhm, ohmCm2, widthMm, lengthMm, transferMm],
            10 * Math.Sqrt(sheetOhm * ohmCm2) / widthMm / Math.Tanh(lengthMm / transferMm),
            steps);

    internal static double CoveredDemand<TSteps>(double amperesPerM2, double share, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(VoltageFormulas.CoveredDemand, [amperesPerM2, share], amperesPerM2 * share, steps);

    internal static double WindowA<TSteps>(double amperesPerM2, double servedM2, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(VoltageFormulas.WindowCurrent, [amperesPerM2, servedM2], amperesPerM2 * servedM2, steps);

    internal static double EqualDiscMm<TSteps>(double cm2, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(VoltageFormulas.EqualDisc, [cm2], Math.Sqrt(cm2 * 100 / Math.PI), steps);

    internal static double TotalV<TSteps>(double amperes, double adhesiveOhm, double spreadOhm, double stripOhm, double distributedV, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(
            VoltageFormulas.Total,
            [amperes, adhesiveOhm, spreadOhm, stripOhm, distributedV],
            (amperes * (adhesiveOhm + spreadOhm + stripOhm)) + distributedV,
            steps);

    /// <summary>Voltage lost at one window, from the resistance of a square of foil and the current for each covered area.</summary>
    internal static VoltageTerms Budget<TSteps>(
        double squareOhm,
        double demandAmperesPerM2,
        double servedM2,
        double ohmCm2,
        double contactCm2,
        double lengthMm,
        double widthMm,
        TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double amperes = WindowA(demandAmperesPerM2, servedM2, steps);
        double adhesive = AdhesiveOhm(ohmCm2, contactCm2, steps);
        double disc = EqualDiscMm(contactCm2, steps);
        double ring = EqualDiscMm(servedM2 * 1e4, steps);
        double spread = DiscToRingOhm(squareOhm, ring, disc, steps);
        double strip = StripOhm(squareOhm, lengthMm, widthMm, steps);
        double distributed = DistributedV(demandAmperesPerM2, squareOhm, lengthMm, steps);
        double total = TotalV(amperes, adhesive, spread, strip, distributed, steps);
        return new(amperes, amperes * adhesive, amperes * spread, (amperes * strip) + distributed, total);
    }

    /// <summary>
    /// The total of the same in lanes, from thickness and resistivity of the foil. Not a number where a value is outside the range
    /// that the typed form asks for.
    /// </summary>
    internal static TLanes TotalV<TLanes>(
        TLanes foilUm,
        TLanes ohmM,
        TLanes demandAmperesPerM2,
        TLanes servedM2,
        TLanes ohmCm2,
        TLanes contactCm2,
        TLanes lengthMm,
        TLanes widthMm)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes square = ohmM / (foilUm * MetresPerUm);
        TLanes amperes = demandAmperesPerM2 * servedM2;
        TLanes disc = TLanes.Sqrt(contactCm2 * 100 / Math.PI);
        TLanes ring = TLanes.Sqrt(servedM2 * 1e4 * 100 / Math.PI);
        TLanes spread = square / (2 * Math.PI) * TLanes.Log(ring / disc);
        TLanes strip = square * lengthMm / widthMm;
        TLanes distributed = demandAmperesPerM2 * square * (lengthMm / 1000) * (lengthMm / 1000) / 2;
        TLanes holds = Above0(foilUm, 10_000) & Above0(ohmM, 1) & (demandAmperesPerM2 >= 0) & (demandAmperesPerM2 <= double.MaxValue)
            & Above0(contactCm2, double.MaxValue) & (servedM2 >= contactCm2 / 1e4) & (servedM2 <= 1e6)
            & Above0(ohmCm2, double.MaxValue) & Above0(lengthMm, 1e9) & Above0(widthMm, 10_000);
        return TLanes.Where(holds, (amperes * ((ohmCm2 / contactCm2) + spread + strip)) + distributed, double.NaN);
    }

    internal static double SharePercent<TSteps>(double lostV, double drivingV, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(VoltageFormulas.Share, [lostV, drivingV], 100 * lostV / drivingV, steps);

    internal static double MostV<TSteps>(double highestV, double lowestV, TSteps steps)
        where TSteps : struct, IStepRecorder => Noted(VoltageFormulas.NetworkDrop, [highestV, lowestV], Math.Max(highestV, lowestV), steps);

    private static double Noted<TSteps>(Formula formula, ReadOnlySpan<double> inputs, double result, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (TSteps.Records)
        {
            steps.Add(formula, inputs, result);
        }

        return result;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Above0<TLanes>(TLanes value, double most)
        where TLanes : struct, ILanes<TLanes> => (value > 0) & (value <= most);
}
