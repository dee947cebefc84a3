using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>
/// Which pieces come from which roll: a cut list for the crew, with a number of rolls that no plan can beat.
/// </summary>
/// <remarks>
/// Strip is cut with scissors, so a cut takes nothing away: no kerf is counted. The plan is the best of several rules,
/// not of all plans; <see cref="ProvedMinimal"/> says when it is known that none takes fewer rolls. Lengths are counted
/// in whole micrometres. Equal pieces in any order give the same plan.
/// </remarks>
/// <example><code source="CutPlanPage.cs" region="cut-list" /></example>
public sealed record CutPlan : IHasWorkings
{
    private readonly WholePieceBound wholePieces;
    private readonly StripLedger? ledger;

    private CutPlan(long rollUm, long shortestUm, ValueList<CutPattern> patterns, WholePieceBound wholePieces, StripLedger? ledger)
    {
        this.RollUm = rollUm;
        this.ShortestUm = shortestUm;
        this.Patterns = patterns;
        this.wholePieces = wholePieces;
        this.ledger = ledger;
        this.Rolls = patterns.Sum(static pattern => pattern.Times);
        this.LeastRolls = this.Bound(default(NoSteps));
        this.OffcutsWorthKeeping = new(patterns
            .Where(pattern => pattern.RemnantUm >= shortestUm)
            .GroupBy(static pattern => pattern.RemnantUm, static pattern => pattern.Times)
            .OrderByDescending(static same => same.Key)
            .Select(static same => new CutPiece(same.Key, same.Sum())));
        this.ScrapUm = patterns.Where(pattern => pattern.RemnantUm < shortestUm).Sum(static pattern => checked(pattern.RemnantUm * pattern.Times));
    }

    /// <summary>Length of a roll.</summary>
    public Length RollLength => Length.FromMicrometers(this.RollUm);

    /// <summary>The shortest offcut worth keeping.</summary>
    public Length ShortestPiece => Length.FromMicrometers(this.ShortestUm);

    /// <summary>How the rolls are cut up, longest pieces first.</summary>
    public ValueList<CutPattern> Patterns { get; }

    /// <summary>Rolls the plan takes.</summary>
    public long Rolls { get; }

    /// <summary>A number that no plan of cutting can beat.</summary>
    public long LeastRolls { get; }

    /// <summary>Rolls above that number: the plan takes at most so many too many.</summary>
    public long Gap => this.Rolls - this.LeastRolls;

    /// <summary>Whether the plan is known to need the fewest rolls: it meets the bound. If not, it may still be the best.</summary>
    public bool ProvedMinimal => this.Rolls == this.LeastRolls;

    /// <summary>Offcuts that are at least the shortest piece, longest first.</summary>
    public ValueList<CutPiece> OffcutsWorthKeeping { get; }

    /// <summary>Offcuts shorter than that, all together.</summary>
    public Length Scrap => Length.FromMicrometers(this.ScrapUm);

    internal long RollUm { get; }

    internal long ShortestUm { get; }

    internal long ScrapUm { get; }

    /// <summary>Plans the cutting of whole pieces.</summary>
    /// <param name="pieces">The pieces, in any order.</param>
    /// <param name="rollLength">Length of a roll.</param>
    /// <param name="shortestPiece">The shortest offcut worth keeping, more than 0.</param>
    /// <exception cref="ArgumentException">A piece is longer than the roll.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static CutPlan Of(IEnumerable<CutPiece> pieces, Length rollLength, Length shortestPiece)
    {
        PieceSizes sizes = Sizes(pieces, rollLength);
        WholePieceBound bound = WholePieceBound.Of(sizes);
        List<PackedRolls> fewest = WholePiecePlans.Of(sizes, bound).MinBy(static plan => plan.Sum(static group => group.Rolls))!;
        var tally = new PatternTally(sizes.RollUm);
        foreach (PackedRolls group in fewest)
        {
            tally.Add(group.Cuts, [], 0, group.Rolls);
        }

        return new(sizes.RollUm, CutPiece.WholeUm(shortestPiece, nameof(shortestPiece)), tally.Patterns(), bound, null);
    }

    /// <summary>Takes over a plan made elsewhere, by a solver or by hand, after checking that it cuts what is asked.</summary>
    /// <param name="pieces">The pieces asked for, in any order.</param>
    /// <param name="rollLength">Length of a roll.</param>
    /// <param name="shortestPiece">The shortest offcut worth keeping, more than 0.</param>
    /// <param name="patterns">How the rolls are cut up.</param>
    /// <exception cref="ArgumentException">The patterns cut other pieces, or from other rolls; or a piece is longer than the roll.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static CutPlan FromPatterns(
        IEnumerable<CutPiece> pieces, Length rollLength, Length shortestPiece, IEnumerable<CutPattern> patterns)
    {
        ArgumentNullException.ThrowIfNull(patterns);
        PieceSizes sizes = Sizes(pieces, rollLength);
        ValueList<CutPattern> all = new(patterns);
        if (all.FirstOrDefault(pattern => pattern.RollUm != sizes.RollUm) is { } other)
        {
            throw new ArgumentException($"A pattern cuts a roll of {other.RollUm} um, but rolls are {sizes.RollUm} um long.", nameof(patterns));
        }

        if (all.Any(static pattern => pattern.Runs.Count > 0 || pattern.SpareUm > 0))
        {
            throw new ArgumentException("A pattern holds runs or spare; only whole pieces are asked for here.", nameof(patterns));
        }

        var cut = new PieceSizes(sizes.RollUm, all.SelectMany(static pattern => pattern.Pieces.Select(
            piece => (piece.LengthUm, checked(piece.Count * pattern.Times)))));
        if (!cut.Sizes.SequenceEqual(sizes.Sizes))
        {
            (long length, long count) = cut.Sizes.Except(sizes.Sizes).Concat(sizes.Sizes.Except(cut.Sizes)).First();
            throw new ArgumentException($"The patterns do not cut the pieces asked for: see {count} x {length} um.", nameof(patterns));
        }

        return new(sizes.RollUm, CutPiece.WholeUm(shortestPiece, nameof(shortestPiece)), all, WholePieceBound.Of(sizes), null);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Bound(steps);
        return steps.Under("Fewest rolls");
    }

    /// <summary>Rolls, patterns and bound in a few words.</summary>
    public override string ToString() => this.ProvedMinimal
        ? $"{this.Rolls} roll(s), {this.Patterns.Count} pattern(s), proved minimal"
        : $"{this.Rolls} roll(s), {this.Patterns.Count} pattern(s), at least {this.LeastRolls} needed";

    /// <summary>The plan of a take-off: whole pieces, runs and spare.</summary>
    internal static CutPlan OfTakeOff(
        long rollUm, long shortestUm, ValueList<CutPattern> patterns, WholePieceBound wholePieces, StripLedger ledger) =>
        new(rollUm, shortestUm, patterns, wholePieces, ledger);

    private long Bound<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        long whole = this.wholePieces.Count(steps);
        return this.ledger is { } l
            ? (long)TakeOffKernel.LeastRolls(whole, l.CoverUm, l.LapUm, l.TrimUm, l.ContingencyUm, this.RollUm / 1e3, steps)
            : whole;
    }

    private static PieceSizes Sizes(IEnumerable<CutPiece> pieces, Length rollLength)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        long rollUm = CutPiece.WholeUm(rollLength, nameof(rollLength));
        var sizes = new PieceSizes(rollUm, pieces.Select(static piece => (piece.LengthUm, piece.Count)));
        return sizes.Sizes.Length > 0 && sizes.Sizes[0].LengthUm > rollUm
            ? throw new ArgumentException(
                $"A piece {sizes.Sizes[0].LengthUm} um long cannot be cut whole from a roll of {rollUm} um.", nameof(pieces))
            : sizes;
    }
}
