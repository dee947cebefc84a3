namespace SacrificialTape.TakeOff;

/// <summary>Like pieces cut from a roll, after those cut before: a list that rolls with the same beginning share.</summary>
internal sealed class Cut(long lengthUm, long count, Cut? before)
{
    internal long LengthUm { get; } = lengthUm;

    internal long Count { get; } = count;

    internal Cut? Before { get; } = before;
}
