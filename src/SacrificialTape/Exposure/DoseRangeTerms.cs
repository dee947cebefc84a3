using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>Between which bounds the air of a site may lie, both ends included: degC, %, and twice mg/(m2.d).</summary>
internal readonly record struct DoseRangeTerms(
    double LeastCelsius,
    double MostCelsius,
    double LeastPercent,
    double MostPercent,
    double LeastSulfur,
    double MostSulfur,
    double LeastChloride,
    double MostChloride)
{
    /// <summary>The data behind the functions (recalled, check before use).</summary>
    internal static DoseRangeTerms Fit => new(-17.1, 28.7, 34, 93, 0.7, 150.4, 0.4, 760.5);

    /// <summary>All air that can be described.</summary>
    internal static DoseRangeTerms Air => new(-90, 70, 0, 100, 0, double.MaxValue, 0, double.MaxValue);

    /// <summary>A mask of the lanes whose values all lie inside; one that is not a number does not.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal TLanes Holds<TLanes>(TLanes celsius, TLanes percent, TLanes sulfur, TLanes chloride)
        where TLanes : struct, ILanes<TLanes> =>
        (celsius >= this.LeastCelsius) & (celsius <= this.MostCelsius)
        & (percent >= this.LeastPercent) & (percent <= this.MostPercent)
        & (sulfur >= this.LeastSulfur) & (sulfur <= this.MostSulfur)
        & (chloride >= this.LeastChloride) & (chloride <= this.MostChloride);
}
