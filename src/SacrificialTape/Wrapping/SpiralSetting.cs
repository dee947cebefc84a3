using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>How a spiral is set, in the words of the crew that lays it.</summary>
/// <remarks>
/// Lap: zero or more; it must be less than the strip is wide, which is checked where the strip is known. Advance: more
/// than zero. <c>default</c> is unset and says so when read.
/// </remarks>
public readonly record struct SpiralSetting
{
    private readonly StoredNumber valueMm;
    private readonly LapConvention convention;

    private SpiralSetting(LapConvention convention, double valueMm)
    {
        this.convention = convention;
        this.valueMm = new StoredNumber(valueMm);
    }

    /// <summary>Where it is measured.</summary>
    public LapConvention Convention
    {
        get
        {
            _ = this.ValueMm;
            return this.convention;
        }
    }

    /// <summary>The lap, or for <see cref="LapConvention.Advance"/> the advance.</summary>
    public Length Value => Length.FromMillimeters(this.ValueMm);

    internal double ValueMm => this.valueMm.Read(nameof(SpiralSetting));

    /// <summary>By the true lap, measured across the strip.</summary>
    /// <param name="lap">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is negative.</exception>
    public static SpiralSetting FromTrueLap(Length lap) => new(LapConvention.TrueLap, CheckLap(lap));

    /// <summary>By the lap measured along the pipe.</summary>
    /// <param name="lap">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is negative.</exception>
    public static SpiralSetting FromLapAlongPipe(Length lap) => new(LapConvention.LapAlongPipe, CheckLap(lap));

    /// <summary>By two marks on the pipe, strip width less this lap apart; after a turn the same wheel meets the second mark.</summary>
    /// <param name="lap">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lap is negative.</exception>
    public static SpiralSetting FromLapBetweenMarks(Length lap) => new(LapConvention.LapBetweenMarks, CheckLap(lap));

    /// <summary>By the distance between two marks on the pipe.</summary>
    /// <param name="advance">Along the pipe per turn, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The advance is not positive.</exception>
    public static SpiralSetting FromAdvance(Length advance) => new(
        LapConvention.Advance,
        AcceptedRange.Above(0, "mm").Check(UnitConversions.Millimeters(advance), nameof(advance)));

    /// <summary>The setting in a few words.</summary>
    public override string ToString() => this.valueMm.IsSet
        ? this.convention switch
        {
            LapConvention.TrueLap => "true lap ",
            LapConvention.LapAlongPipe => "lap along the pipe ",
            LapConvention.LapBetweenMarks => "strip width between marks less ",
            _ => "advance ",
        } + MeasureText.Write(this.ValueMm, TradeUnit.Millimeter, 6)
        : "unset";

    private static double CheckLap(Length lap) =>
        AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(lap), nameof(lap));
}
