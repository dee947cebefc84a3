namespace SacrificialTape.TakeOff;

/// <summary>Spare of one stock, part by part, in whole micrometres.</summary>
internal readonly record struct SpareLengths(long UndividedUm, long SpoilageUm, long TrialWrapsUm, long RepairStockUm)
{
    internal long TotalUm => checked(this.UndividedUm + this.SpoilageUm + this.TrialWrapsUm + this.RepairStockUm);

    internal long Of(SparePart part) => part switch
    {
        SparePart.Undivided => this.UndividedUm,
        SparePart.Spoilage => this.SpoilageUm,
        SparePart.TrialWraps => this.TrialWrapsUm,
        SparePart.RepairStock => this.RepairStockUm,
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "Not a part of spare known here."),
    };
}
