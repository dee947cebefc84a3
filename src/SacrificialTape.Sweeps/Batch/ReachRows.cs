using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>How far zinc protects bare steel beside it under a thin film, row by row: see <see cref="LinearReach"/>.</summary>
/// <remarks>
/// Potentials are all against one reference electrode; a row is NaN where they do not lie in the order edge, wanted, rest, or a
/// value is NaN or outside its range. Columns must be as long as the destination and apart from it. Nothing is allocated.
/// </remarks>
public static class ReachRows
{
    /// <summary>Reach on steel without end, mm. From the scalar form a row differs by at most 4 units in the last place.</summary>
    /// <param name="filmSiemensPerM">Conductivity of the film, S/m; more than 0.</param>
    /// <param name="filmUm">Thickness of the film, um; more than 0, at most 1000.</param>
    /// <param name="steelOhmM2">Polarisation resistance of the steel, ohm.m2; more than 0.</param>
    /// <param name="edgeV">Potential at the edge of the steel, V.</param>
    /// <param name="restV">Rest potential of the steel, V.</param>
    /// <param name="wantedV">Potential at which it counts as protected, V.</param>
    /// <param name="reachMm">Where the reaches go, mm.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void OnEndlessSteel(
        Column filmSiemensPerM, Column filmUm, Column steelOhmM2, Column edgeV, Column restV, Column wantedV, Span<double> reachMm) =>
        Run<EndlessSteel>(filmSiemensPerM, filmUm, steelOhmM2, edgeV, restV, wantedV, reachMm);

    /// <summary>
    /// Reach to the middle of a gap with tape on both sides, mm. From the scalar form a row differs by at most 8 units in the last
    /// place.
    /// </summary>
    /// <param name="filmSiemensPerM">Conductivity of the film, S/m; more than 0.</param>
    /// <param name="filmUm">Thickness of the film, um; more than 0, at most 1000.</param>
    /// <param name="steelOhmM2">Polarisation resistance of the steel, ohm.m2; more than 0.</param>
    /// <param name="edgeV">Potential at the edge of the steel, V.</param>
    /// <param name="restV">Rest potential of the steel, V.</param>
    /// <param name="wantedV">Potential at which it counts as protected, V.</param>
    /// <param name="reachMm">Where the reaches go, mm.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void ToMiddleOfGap(
        Column filmSiemensPerM, Column filmUm, Column steelOhmM2, Column edgeV, Column restV, Column wantedV, Span<double> reachMm) =>
        Run<MiddleOfGap>(filmSiemensPerM, filmUm, steelOhmM2, edgeV, restV, wantedV, reachMm);

    private static void Run<TPlace>(
        Column filmSiemensPerM, Column filmUm, Column steelOhmM2, Column edgeV, Column restV, Column wantedV, Span<double> reachMm)
        where TPlace : struct, IPlace
    {
        filmSiemensPerM.Check(reachMm, nameof(filmSiemensPerM));
        filmUm.Check(reachMm, nameof(filmUm));
        steelOhmM2.Check(reachMm, nameof(steelOhmM2));
        edgeV.Check(reachMm, nameof(edgeV));
        restV.Check(reachMm, nameof(restV));
        wantedV.Check(reachMm, nameof(wantedV));
        RowLoop.Run(new Reaches<TPlace>(filmSiemensPerM, filmUm, steelOhmM2, edgeV, restV, wantedV, reachMm), reachMm.Length);
    }

    private interface IPlace
    {
        static abstract TLanes Reach<TLanes>(TLanes decayMm, TLanes edgeV, TLanes restV, TLanes wantedV)
            where TLanes : struct, ILanes<TLanes>;
    }

    private readonly struct EndlessSteel : IPlace
    {
        public static TLanes Reach<TLanes>(TLanes decayMm, TLanes edgeV, TLanes restV, TLanes wantedV)
            where TLanes : struct, ILanes<TLanes> => ReachKernel.HalfSpaceReach(decayMm, edgeV, restV, wantedV);
    }

    private readonly struct MiddleOfGap : IPlace
    {
        public static TLanes Reach<TLanes>(TLanes decayMm, TLanes edgeV, TLanes restV, TLanes wantedV)
            where TLanes : struct, ILanes<TLanes> => ReachKernel.HalfGapReach(decayMm, edgeV, restV, wantedV);
    }

    private readonly ref struct Reaches<TPlace>(
        Column siemens, Column film, Column ohm, Column edge, Column rest, Column wanted, Span<double> reaches)
        : IRowFormula<Reaches<TPlace>>
        where TPlace : struct, IPlace
    {
        private readonly Column siemens = siemens;
        private readonly Column film = film;
        private readonly Column ohm = ohm;
        private readonly Column edge = edge;
        private readonly Column rest = rest;
        private readonly Column wanted = wanted;
        private readonly Span<double> reaches = reaches;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in Reaches<TPlace> batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess
        {
            TLanes decay = ReachKernel.DecayMm(
                batch.siemens.At<TLanes, TAccess>(row), batch.film.At<TLanes, TAccess>(row), batch.ohm.At<TLanes, TAccess>(row));
            TLanes reach = TPlace.Reach(
                decay, batch.edge.At<TLanes, TAccess>(row), batch.rest.At<TLanes, TAccess>(row), batch.wanted.At<TLanes, TAccess>(row));
            TAccess.Store(reach, ref MemoryMarshal.GetReference(batch.reaches), row);
        }
    }
}
