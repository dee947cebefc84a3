using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a measured curve is read and written.</summary>
internal static class MeasuredLossForm
{
    private static readonly IReadOnlyList<(string Word, CurveInterpolation Value)> Interpolations =
        [("straight", CurveInterpolation.Linear), ("monotone cubic", CurveInterpolation.MonotoneCubic)];

    private static readonly IReadOnlyList<(string Word, CurveEnd Value)> Ends =
        [("refuse", CurveEnd.Refuse), ("end tangent", CurveEnd.EndTangent), ("last chord", CurveEnd.LastChord)];

    internal static LossLawForm Form { get; } = LossLawForm.Of<MeasuredLoss>("measured curve", Read, Write);

    private static MeasuredLoss? Read(FormReader reader)
    {
        ValueList<LossPoint> points = reader.List("points", ReadPoint);
        CurveInterpolation interpolation = reader.Word("interpolation", Interpolations);
        CurveEnd end = reader.Word("end", Ends);
        Basis? basis = reader.Members.Required("basis", "on what the curve rests") is { } member ? BasisReader.Read(member, reader.Context.Faults) : null;
        return reader.Make(() => new MeasuredLoss(points, interpolation, end, basis!));
    }

    private static void Write(FormWriter writer, MeasuredLoss law)
    {
        writer.List("points", law.Points, WritePoint);
        writer.Word("interpolation", law.Interpolation, Interpolations);
        writer.Word("end", law.End, Ends);
        writer.Raw(json => BasisReader.Write(json, "basis", law.Basis));
    }

    private static LossPoint? ReadPoint(FormReader reader)
    {
        double years = reader.Number("time", TradeUnit.Year);
        double um = reader.Number("loss", TradeUnit.Micrometer);
        return reader.Make(() => new LossPoint(UnitConversions.FromYears(years), Length.FromMicrometers(um)));
    }

    private static void WritePoint(FormWriter writer, LossPoint point)
    {
        writer.Number("time", point.Years, TradeUnit.Year);
        writer.Number("loss", point.Um, TradeUnit.Micrometer);
    }
}
