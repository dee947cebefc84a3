using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Whether a setting gives a spiral on a pipe at all, and if not, which would.</summary>
internal static class SpiralSettingCheck
{
    internal static void Accept(double diameterMm, double widthMm, SpiralSetting setting)
    {
        if (Refusal(PipeKernel.CircumferenceMm(diameterMm, default(NoSteps)), widthMm, setting) is { } refusal)
        {
            throw new ArgumentOutOfRangeException(nameof(setting), refusal);
        }
    }

    internal static bool Fits(Length outsideDiameter, double widthMm, SpiralSetting setting) =>
        Refusal(PipeKernel.CircumferenceMm(UnitConversions.Millimeters(outsideDiameter), default(NoSteps)), widthMm, setting) is null;

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

    private static string? Refusal(double circumference, double widthMm, SpiralSetting setting)
    {
        double valueMm = setting.ValueMm;
        if (setting.Convention == LapConvention.Advance)
        {
            return AdvanceRefusal(circumference, widthMm, valueMm);
        }

        if (!(valueMm < widthMm))
        {
            return string.Create(CultureInfo.InvariantCulture,
                $"A lap of {valueMm:0.######} mm on a strip {widthMm:0.######} mm wide: the lap must be at least 0 and less than the strip is wide.");
        }

        if (setting.Convention == LapConvention.TrueLap && !(widthMm - valueMm < circumference))
        {
            return string.Create(CultureInfo.InvariantCulture,
                $"A true lap of {valueMm:0.######} mm on a strip {widthMm:0.######} mm wide advances {widthMm - valueMm:0.######} mm across itself, but the pipe is only {circumference:0.######} mm round: the lap must be more than {widthMm - circumference:0.######} mm.");
        }

        if (setting.Convention == LapConvention.LapAlongPipe && valueMm == 0 && !(widthMm < circumference))
        {
            return string.Create(CultureInfo.InvariantCulture,
                $"Without a lap along the pipe a strip {widthMm:0.######} mm wide does not go round a pipe {circumference:0.######} mm round: it must be narrower than that.");
        }

        // With a wider strip the strip's edge runs along the pipe faster than any turn can close on it.
        double widest = Math.Sqrt((circumference * circumference) + (valueMm * valueMm));
        return setting.Convention == LapConvention.LapAlongPipe && WithAllowance.Above(widthMm, widest)
            ? string.Create(CultureInfo.InvariantCulture,
                $"A lap of {valueMm:0.######} mm along the pipe with a strip {widthMm:0.######} mm wide has no solution on a pipe {circumference:0.######} mm round: the strip may be at most {widest:0.######} mm wide.")
            : null;
    }

    // The turns just touch when p = w / cos(theta); a strip as wide as the pipe is round always closes.
    private static string? AdvanceRefusal(double circumference, double widthMm, double advanceMm)
    {
        if (widthMm >= circumference)
        {
            return null;
        }

        double touching = widthMm * circumference
            / Math.Sqrt((circumference - widthMm) * (circumference + widthMm));
        return WithAllowance.Above(advanceMm, touching)
            ? string.Create(CultureInfo.InvariantCulture,
                $"An advance of {advanceMm:0.######} mm leaves a gap between the turns of a strip {widthMm:0.######} mm wide: it must be more than 0 and at most {touching:0.######} mm.")
            : null;
    }
}
