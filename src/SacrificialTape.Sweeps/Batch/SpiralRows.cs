using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Quantities;
using SacrificialTape.TakeOff;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>Spirals on pipe, row by row: see <see cref="SpiralGeometry"/>. Bit for bit the scalar forms.</summary>
/// <remarks>
/// A row is NaN where an input is NaN or the typed form refuses it: diameter 1 mm to 100 m, strip 1 to 2000 mm, and a lap or
/// advance that leaves a spiral on this pipe. Columns must be as long as the destination and apart from it. Nothing is
/// allocated.
/// </remarks>
public static class SpiralRows
{
    /// <summary>Angle between strip and circumference, degrees.</summary>
    /// <param name="outsideDiameterMm">Outside diameter of the pipe, mm.</param>
    /// <param name="stripWidthMm">Width of the strip, mm.</param>
    /// <param name="convention">How lap or advance is stated.</param>
    /// <param name="lapOrAdvanceMm">The lap, or for <see cref="LapConvention.Advance"/> the advance, mm.</param>
    /// <param name="angleDegrees">Where the angles go.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such convention.</exception>
    public static void Angle(
        Column outsideDiameterMm, Column stripWidthMm, LapConvention convention, Column lapOrAdvanceMm, Span<double> angleDegrees) =>
        Run<AnglesDegrees>(outsideDiameterMm, stripWidthMm, convention, lapOrAdvanceMm, angleDegrees);

    /// <summary>Advance along the pipe in one turn, mm.</summary>
    /// <param name="outsideDiameterMm">Outside diameter of the pipe, mm.</param>
    /// <param name="stripWidthMm">Width of the strip, mm.</param>
    /// <param name="convention">How lap or advance is stated.</param>
    /// <param name="lapOrAdvanceMm">The lap, or for <see cref="LapConvention.Advance"/> the advance, mm.</param>
    /// <param name="advanceMm">Where the advances go, mm.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such convention.</exception>
    public static void Advance(
        Column outsideDiameterMm, Column stripWidthMm, LapConvention convention, Column lapOrAdvanceMm, Span<double> advanceMm) =>
        Run<AdvancesMm>(outsideDiameterMm, stripWidthMm, convention, lapOrAdvanceMm, advanceMm);

    /// <summary>Lap across the strip, mm: the one that a least lap is judged on.</summary>
    /// <param name="outsideDiameterMm">Outside diameter of the pipe, mm.</param>
    /// <param name="stripWidthMm">Width of the strip, mm.</param>
    /// <param name="convention">How lap or advance is stated.</param>
    /// <param name="lapOrAdvanceMm">The lap, or for <see cref="LapConvention.Advance"/> the advance, mm.</param>
    /// <param name="trueLapMm">Where the laps go, mm.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such convention.</exception>
    public static void TrueLap(
        Column outsideDiameterMm, Column stripWidthMm, LapConvention convention, Column lapOrAdvanceMm, Span<double> trueLapMm) =>
        Run<TrueLapsMm>(outsideDiameterMm, stripWidthMm, convention, lapOrAdvanceMm, trueLapMm);

    /// <summary>Tape area over pipe area: the number of layers on average.</summary>
    /// <param name="outsideDiameterMm">Outside diameter of the pipe, mm.</param>
    /// <param name="stripWidthMm">Width of the strip, mm.</param>
    /// <param name="convention">How lap or advance is stated.</param>
    /// <param name="lapOrAdvanceMm">The lap, or for <see cref="LapConvention.Advance"/> the advance, mm.</param>
    /// <param name="layers">Where the numbers of layers go.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such convention.</exception>
    public static void LayersOnAverage(
        Column outsideDiameterMm, Column stripWidthMm, LapConvention convention, Column lapOrAdvanceMm, Span<double> layers) =>
        Run<Layers>(outsideDiameterMm, stripWidthMm, convention, lapOrAdvanceMm, layers);

    /// <summary>Strip on each metre of pipe, mm, away from the ends: see <see cref="ConsumptionChart"/>.</summary>
    /// <param name="outsideDiameterMm">Outside diameter of the pipe, mm.</param>
    /// <param name="stripWidthMm">Width of the strip, mm.</param>
    /// <param name="convention">How lap or advance is stated.</param>
    /// <param name="lapOrAdvanceMm">The lap, or for <see cref="LapConvention.Advance"/> the advance, mm.</param>
    /// <param name="stripMm">Where the lengths of strip go, mm for each metre of pipe.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such convention.</exception>
    public static void StripPerMeter(
        Column outsideDiameterMm, Column stripWidthMm, LapConvention convention, Column lapOrAdvanceMm, Span<double> stripMm) =>
        Run<StripsPerMeterMm>(outsideDiameterMm, stripWidthMm, convention, lapOrAdvanceMm, stripMm);

    private static void Run<TAnswer>(
        Column outsideDiameterMm, Column stripWidthMm, LapConvention convention, Column lapOrAdvanceMm, Span<double> destination)
        where TAnswer : struct, ISpiralAnswer
    {
        if (!Enum.IsDefined(convention))
        {
            throw new ArgumentOutOfRangeException(nameof(convention), convention, "Not a way to state a lap.");
        }

        outsideDiameterMm.Check(destination, nameof(outsideDiameterMm));
        stripWidthMm.Check(destination, nameof(stripWidthMm));
        lapOrAdvanceMm.Check(destination, nameof(lapOrAdvanceMm));
        RowLoop.Run(new Spirals<TAnswer>(outsideDiameterMm, stripWidthMm, convention, lapOrAdvanceMm, destination), destination.Length);
    }

    private interface ISpiralAnswer
    {
        static abstract TLanes Of<TLanes>(in SpiralLanes<TLanes> spiral)
            where TLanes : struct, ILanes<TLanes>;
    }

    private readonly struct AnglesDegrees : ISpiralAnswer
    {
        public static TLanes Of<TLanes>(in SpiralLanes<TLanes> spiral)
            where TLanes : struct, ILanes<TLanes> => spiral.AngleDegrees;
    }

    private readonly struct AdvancesMm : ISpiralAnswer
    {
        public static TLanes Of<TLanes>(in SpiralLanes<TLanes> spiral)
            where TLanes : struct, ILanes<TLanes> => spiral.AdvanceMm;
    }

    private readonly struct TrueLapsMm : ISpiralAnswer
    {
        public static TLanes Of<TLanes>(in SpiralLanes<TLanes> spiral)
            where TLanes : struct, ILanes<TLanes> => spiral.TrueLapMm;
    }

    private readonly struct Layers : ISpiralAnswer
    {
        public static TLanes Of<TLanes>(in SpiralLanes<TLanes> spiral)
            where TLanes : struct, ILanes<TLanes> => spiral.LayersOnAverage;
    }

    private readonly struct StripsPerMeterMm : ISpiralAnswer
    {
        public static TLanes Of<TLanes>(in SpiralLanes<TLanes> spiral)
            where TLanes : struct, ILanes<TLanes> => ChartKernel.StripPerMeterMm(spiral);
    }

    private readonly ref struct Spirals<TAnswer>(
        Column diameters, Column widths, LapConvention convention, Column values, Span<double> answers) : IRowFormula<Spirals<TAnswer>>
        where TAnswer : struct, ISpiralAnswer
    {
        private readonly Column diameters = diameters;
        private readonly Column widths = widths;
        private readonly LapConvention convention = convention;
        private readonly Column values = values;
        private readonly Span<double> answers = answers;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in Spirals<TAnswer> batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess
        {
            SpiralLanes<TLanes> spiral = SpiralKernel.Solve(
                batch.diameters.At<TLanes, TAccess>(row),
                batch.widths.At<TLanes, TAccess>(row),
                batch.convention,
                batch.values.At<TLanes, TAccess>(row));
            TAccess.Store(TAnswer.Of(spiral), ref MemoryMarshal.GetReference(batch.answers), row);
        }
    }
}
