using SacrificialTape.Provenance;

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
}
