using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>One way of cutting up a roll, and how many rolls are cut up that way.</summary>
/// <remarks>
/// Pieces, runs, spare and remnant together are the roll, to the micrometre: a cut by scissors takes no strip away.
/// Times: at least 1.
/// </remarks>
public sealed record CutPattern
{
    /// <summary>Describes a pattern of whole pieces.</summary>
    /// <param name="rollLength">Length of the roll.</param>
    /// <param name="pieces">The pieces cut from it.</param>
    /// <param name="times">How many rolls are cut up this way.</param>
    /// <exception cref="ArgumentException">The pieces are longer than the roll.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public CutPattern(Length rollLength, IEnumerable<CutPiece> pieces, long times)
        : this(CutPiece.WholeUm(rollLength, nameof(rollLength)), Given(pieces.Listed()), ValueList<CutPiece>.Empty, 0, times)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(times, 1);
        if (this.RemnantUm < 0)
        {
            throw new ArgumentException($"The pieces are {-this.RemnantUm} um longer than the roll.", nameof(pieces));
        }
    }

    internal CutPattern(long rollUm, ValueList<CutPiece> pieces, ValueList<CutPiece> runs, long spareUm, long times)
    {
        this.RollUm = rollUm;
        this.Pieces = pieces;
        this.Runs = runs;
        this.SpareUm = spareUm;
        this.Times = times;
        Int128 left = (Int128)rollUm - spareUm;
        foreach (CutPiece cut in pieces.Concat(runs))
        {
            left -= (Int128)cut.LengthUm * cut.Count;
        }

        this.RemnantUm = (long)Int128.Max(left, long.MinValue);
    }

    /// <summary>Length of the roll.</summary>
    public Length RollLength => Length.FromMicrometers(this.RollUm);

    /// <summary>The whole pieces, longest first.</summary>
    public ValueList<CutPiece> Pieces { get; }

    /// <summary>
    /// What is run off after them for strips that may be spliced, in that order. The last run of a roll may end in a
    /// splice; the strip then goes on with a run of another roll.
    /// </summary>
    public ValueList<CutPiece> Runs { get; }

    /// <summary>What is set aside as spare.</summary>
    public Length Spare => Length.FromMicrometers(this.SpareUm);

    /// <summary>What is left.</summary>
    public Length Remnant => Length.FromMicrometers(this.RemnantUm);

    /// <summary>How many rolls are cut up this way.</summary>
    public long Times { get; }

    internal long RollUm { get; }

    internal long SpareUm { get; }

    internal long RemnantUm { get; }

    /// <summary>One line of a cut list.</summary>
    public override string ToString()
    {
        IEnumerable<string> parts = this.Pieces.Select(static piece => piece.ToString())
            .Concat(this.Runs.Select(static run => "run " + run))
            .Concat(this.SpareUm > 0 ? ["spare " + Meters(this.SpareUm)] : []);
        return $"{this.Times} roll(s): {string.Join(", ", parts)}; left {Meters(this.RemnantUm)}";
    }

    private static string Meters(long um) => MeasureText.Write(um / 1e6, TradeUnit.Meter, 9);

    private static ValueList<CutPiece> Given(ValueList<CutPiece> pieces)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        return new(pieces.GroupBy(static piece => piece.LengthUm, static piece => piece.Count)
            .OrderByDescending(static same => same.Key)
            .Select(static same => new CutPiece(same.Key, same.Sum())));
    }
}
