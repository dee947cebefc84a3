using System.Runtime.CompilerServices;
namespace SacrificialTape.Quantities;

/// <summary>
/// The one place where numbers are floored, ceiled or held against the bound of a rule; ranges of arguments are exact. Each uses the same relative allowance, so
/// that an exact half or third lap neither gains nor loses a strip because a division ended one digit short. What the
/// hand does on site (wander, in millimetres) is a physical allowance and not part of this.
/// </summary>
internal static class WithAllowance
{
    /// <summary>Relative allowance of every comparison: far above rounding (1e-16), far below any tape measure.</summary>
    internal const double RelativeAllowance = 1e-9;

    internal static double Floor(double value) => Math.Floor(value + Allowance(value));

    internal static double Ceiling(double value) => Math.Ceiling(value - Allowance(value));

    internal static bool AtMost(double value, double bound) =>
        value <= bound + Math.Max(Allowance(value), Allowance(bound));

    /// <summary>The same in lanes: a mask.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes AtMost<TLanes>(TLanes value, TLanes bound)
        where TLanes : struct, ILanes<TLanes> =>
        value <= bound + (RelativeAllowance * TLanes.Max(TLanes.Abs(value), TLanes.Abs(bound)));

    internal static bool AtLeast(double value, double bound) => AtMost(bound, value);

    internal static bool Below(double value, double bound) => !AtLeast(value, bound);

    internal static bool Above(double value, double bound) => !AtMost(value, bound);

    private static double Allowance(double value) => Math.Abs(value) * RelativeAllowance;
}
