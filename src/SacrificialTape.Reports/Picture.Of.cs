using SacrificialTape.Contact;
using SacrificialTape.Inspection;
using SacrificialTape.Jobs;
using SacrificialTape.Reports.Pictures;
using SacrificialTape.ServiceLife;
using SacrificialTape.SiteConditions;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Reports;

/// <content>What can be drawn.</content>
public sealed partial record Picture
{
    /// <summary>A lay on its surface laid flat: strips, laps, setting marks, and windows of bare steel if there are any.</summary>
    /// <param name="lay">A lay that knows the places of its strips (<see cref="IPlacedStrips"/>) on a surface with an unrolled form.</param>
    /// <param name="windows">Windows on the same surface; left out: none.</param>
    /// <exception cref="ArgumentException">The lay does not know the places of its strips, or its surface has no unrolled form.</exception>
    public static Picture OfLay(ILay lay, WindowLayout? windows = null)
    {
        ArgumentNullException.ThrowIfNull(lay);
        return TryOfLay(lay, windows) ?? throw new ArgumentException($"{lay.Description} on {lay.Surface.Description}: the places of its strips on an unrolled surface are not known.", nameof(lay));
    }

    /// <summary>Rings on a bend from the side: laps wide inside and narrow outside.</summary>
    /// <param name="rings">The rings.</param>
    public static Picture OfBend(BendRingLay rings)
    {
        ArgumentNullException.ThrowIfNull(rings);
        return BendPicture.Of(rings);
    }

    /// <summary>One gore as it is cut, and all gores of a head, cone, reducer or column along its axis.</summary>
    /// <param name="gores">The gores.</param>
    public static Picture OfGores(GoreLay gores)
    {
        ArgumentNullException.ThrowIfNull(gores);
        return GorePicture.Of(gores);
    }

    /// <summary>A patch over its cut-out.</summary>
    /// <param name="patch">The patch.</param>
    public static Picture OfPatch(OvalPatch patch)
    {
        ArgumentNullException.ThrowIfNull(patch);
        return PatchPicture.Of(patch);
    }

    /// <summary>Zinc used up over the years, from the slowest to the fastest that is plausible, and the life that is required.</summary>
    /// <param name="life">The life.</param>
    /// <param name="required">The life that is required.</param>
    /// <exception cref="ArgumentException">The life counts no layer, or ends are unlimited: there is nothing to draw.</exception>
    public static Picture OfLife(LifeEstimate life, Lifetime required)
    {
        ArgumentNullException.ThrowIfNull(life);
        return LifePicture.Of(life, required);
    }

    /// <summary>Hours in which laying may go on, with surface temperature and dew point.</summary>
    /// <param name="windows">The windows and their log.</param>
    public static Picture OfWork(WorkWindows windows)
    {
        ArgumentNullException.ThrowIfNull(windows);
        return WorkPicture.Of(windows);
    }

    /// <summary>What can be drawn of a line; null where that is nothing.</summary>
    internal static Picture? OfLine(SurveyLine line) => line.Lay switch
    {
        BendRingLay rings => OfBend(rings),
        GoreLay gores => OfGores(gores),
        _ => TryOfLay(line.Lay, line.Windows),
    };

    private static Picture? TryOfLay(ILay lay, WindowLayout? windows) =>
        lay is IPlacedStrips placed && UnrolledSurface.TryUnroll(lay.Surface, out UnrolledSurface? surface)
            ? UnrolledPicture.Of(lay, placed, surface, windows)
            : null;
}
