using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>Whether a setting gives a spiral on a pipe at all, and if not, which would.</summary>
internal static class SpiralSettingCheck
{
    internal static void Accept(double diameterMm, double widthMm, SpiralSetting setting)
    {
        double circumference = Math.PI * diameterMm;
        double valueMm = setting.ValueMm;
        LapConvention convention = setting.Convention;
        if (convention == LapConvention.Advance)
        {
            AcceptAdvance(circumference, widthMm, setting);
            return;
        }

        if (!(valueMm < widthMm))
        {
            throw new ArgumentOutOfRangeException(nameof(setting), string.Create(CultureInfo.InvariantCulture,
                $"A lap of {valueMm:0.######} mm on a strip {widthMm:0.######} mm wide: the lap must be at least 0 and less than the strip is wide."));
        }

        if (convention == LapConvention.AcrossStrip && !(widthMm - valueMm < circumference))
        {
            throw new ArgumentOutOfRangeException(nameof(setting), string.Create(CultureInfo.InvariantCulture,
                $"A true lap of {valueMm:0.######} mm on a strip {widthMm:0.######} mm wide advances {widthMm - valueMm:0.######} mm across itself, but the pipe is only {circumference:0.######} mm round: the lap must be more than {widthMm - circumference:0.######} mm."));
        }

        // With a wider strip the strip's edge runs along the pipe faster than any turn can close on it.
        double widest = Math.Sqrt((circumference * circumference) + (valueMm * valueMm));
        if (convention == LapConvention.AlongPipe && WithAllowance.Above(widthMm, widest))
        {
            throw new ArgumentOutOfRangeException(nameof(setting), string.Create(CultureInfo.InvariantCulture,
                $"A lap of {valueMm:0.######} mm along the pipe with a strip {widthMm:0.######} mm wide has no solution on a pipe {circumference:0.######} mm round: the strip may be at most {widest:0.######} mm wide."));
        }
    }

    /// <summary>A spiral that ends square under level turns needs room for both of its ends.</summary>
    internal static void AcceptPipe(StraightPipe pipe, in SpiralSolution spiral)
    {
        double shortest = (spiral.WidthMm / spiral.Cosine) + spiral.AdvanceMm;
        if (WithAllowance.Below(pipe.LengthMm, shortest))
        {
            throw new ArgumentOutOfRangeException(nameof(pipe), string.Create(CultureInfo.InvariantCulture,
                $"A pipe {pipe.LengthMm:0.###} mm long is too short for a spiral between level turns, which needs at least {shortest:0.###} mm here. Take rings, or trim the spiral flush."));
        }
    }

    // The turns just touch when p = w / cos(theta); a strip as wide as the pipe is round always closes.
    private static void AcceptAdvance(double circumference, double widthMm, SpiralSetting setting)
    {
        double advanceMm = setting.ValueMm;
        if (widthMm >= circumference)
        {
            return;
        }

        double touching = widthMm * circumference
            / Math.Sqrt((circumference - widthMm) * (circumference + widthMm));
        if (WithAllowance.Above(advanceMm, touching))
        {
            throw new ArgumentOutOfRangeException(nameof(setting), string.Create(CultureInfo.InvariantCulture,
                $"An advance of {advanceMm:0.######} mm leaves a gap between the turns of a strip {widthMm:0.######} mm wide: it must be more than 0 and at most {touching:0.######} mm."));
        }
    }
}
