using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Lays windows out on the surface of a lay so that its contact passes its own checks.</summary>
/// <remarks>
/// <para>Windows stand in rows along and around at even pitches. A square that holds m whole pitches along and k around holds
/// m k windows wherever it lies, so the fewest rows are sought whose pitches give enough in every square metre and leave no
/// point too far. Then a window is put under every strip that would touch none; and all is checked, and made denser until
/// it passes.</para>
/// <para>A window that would fall into an opening of a panel is left out, and the rest made denser if that is too few.</para>
/// </remarks>
public static class WindowPlan
{
    private const int MostInMetre = 24;
    private const int MostAttempts = 12;
    private const double Denser = 1.12;
    private const int MostWindows = 20_000;

    /// <summary>A shape that suits a surface: 50 mm square, on small pipe no more than a third of the girth around.</summary>
    /// <param name="surface">The surface.</param>
    /// <exception cref="ArgumentNullException">The surface is null.</exception>
    public static WindowShape ShapeFor(UnrolledSurface surface)
    {
        ArgumentNullException.ThrowIfNull(surface);
        double around = Math.Min(50, Math.Max(1, Math.Floor(surface.GirthMm / 3)));
        double along = Math.Min(50, Math.Max(1, Math.Floor(surface.LengthMm / 3)));
        return WindowShape.Rectangle(Length.FromMillimeters(along), Length.FromMillimeters(around));
    }

    /// <summary>A layout that passes.</summary>
    /// <param name="lay">The lay, on a surface that can be unrolled.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="shape">Size and form of the windows; left out: <see cref="ShapeFor"/>.</param>
    /// <exception cref="ArgumentException">
    /// The surface of the lay has no unrolled form, or no layout of such windows passes: the message says which check fails.
    /// </exception>
    public static WindowLayout For(ILay lay, RuleSet rules, WindowShape? shape = null)
    {
        ArgumentNullException.ThrowIfNull(lay);
        ArgumentNullException.ThrowIfNull(rules);
        if (!UnrolledSurface.TryUnroll(lay.Surface, out UnrolledSurface? surface))
        {
            throw new ArgumentException($"No unrolled form is known for {lay.Surface.Description}.", nameof(lay));
        }

        WindowShape form = shape ?? ShapeFor(surface);
        double wanted = rules.Number(RuleIds.BareRatioInMetre, TradeUnit.SquareCentimeterPerSquareMeter);
        double farthest = rules.Number(RuleIds.MaximumWindowDistance, TradeUnit.Millimeter);
        string failed = "they do not fit beside each other, or it would take too many of them";
        for (int attempt = 0; attempt < MostAttempts; attempt++)
        {
            if (Rows(surface, form, wanted * Math.Pow(Denser, attempt), farthest * Math.Pow(Denser, -attempt)) is not { } lattice)
            {
                break;
            }

            var layout = new WindowLayout(surface, Lattice(surface, form, lattice.Columns, lattice.Rows));
            layout = UnderEveryStrip(lay, layout, form, rules);
            Finding? broken = new LayContact(lay, layout).Judge(rules, "plan").FirstOrDefault(static finding =>
                finding.Rule.Id is RuleIds.BareRatioInMetre or RuleIds.StripsWithoutSteel or RuleIds.NoWindow or RuleIds.MaximumWindowDistance);
            if (broken is null)
            {
                return layout;
            }

            failed = broken.ToString();
        }

        throw new ArgumentException($"No layout of windows {form} on {surface} passes: {failed}", nameof(shape));
    }

    // Rows along and around, the fewest windows first; among as many, the more even pitches.
    private static (int Columns, int Rows)? Rows(UnrolledSurface surface, WindowShape form, double wantedCm2, double farthestMm)
    {
        double length = surface.LengthMm;
        double girth = surface.GirthMm;
        double metreY = Math.Min(1000, girth);
        double metreX = Math.Min(1e6 / metreY, length);
        metreY = Math.Min(1e6 / metreX, girth);
        double window = form.AlongMm * form.AroundMm * (form.IsRound ? Math.PI / 4 : 1) / 100;
        double needed = WithAllowance.Ceiling(wantedCm2 * metreX * metreY / 1e6 / window);
        double narrowest = surface.IsBend ? surface.LeastFactor(0, girth) : 1;
        (int Columns, int Rows)? best = null;
        double fewest = double.MaxValue;
        double unevenness = double.MaxValue;

        // On small pipe a square metre is long, so that many rows along it and few around are wanted.
        for (int k = 1; k <= MostInMetre * 4; k++)
        {
            double rows = WithAllowance.Ceiling(girth * k / metreY);
            double pitchY = girth / rows;
            if (pitchY < form.AroundMm)
            {
                break;
            }

            double most = Math.Floor(metreX * narrowest / form.AlongMm);
            for (double m = Math.Max(1, Math.Ceiling(needed / k)); m <= Math.Min(most + 1, MostInMetre * MostInMetre * 4.0); m++)
            {
                double columns = WithAllowance.Ceiling(length * m / metreX);
                double pitchX = length / columns;
                if (columns * rows > fewest || pitchX < form.AlongMm / narrowest)
                {
                    break;
                }

                double far = double.Hypot(Math.Max(0, pitchX - form.AlongMm), Math.Max(0, pitchY - form.AroundMm)) / 2;
                double uneven = Math.Abs(Math.Log(pitchX / pitchY));
                if (far <= farthestMm && columns * rows <= MostWindows && (columns * rows < fewest || uneven < unevenness))
                {
                    (fewest, unevenness) = (columns * rows, uneven);
                    best = ((int)columns, (int)rows);
                }
            }
        }

        return best;
    }

    private static ValueList<ContactWindow> Lattice(UnrolledSurface surface, WindowShape form, int columns, int rows)
    {
        var windows = new List<ContactWindow>(columns * rows);
        BareSpot[] openings = surface.Surface is Panel panel
            ? [.. panel.Openings.Where(static opening => opening.IsPlaced).Select(opening => BareSpot.Of(opening, surface))]
            : [];
        for (int column = 0; column < columns; column++)
        {
            for (int row = 0; row < rows; row++)
            {
                // On a closed surface the first row stands on the named line, where it is marked most easily.
                double around = (row + (surface.IsClosed ? 0 : 0.5)) * surface.GirthMm / rows;
                ContactWindow window = form.At(
                    Length.FromMillimeters((column + 0.5) * surface.LengthMm / columns), Length.FromMillimeters(around));
                if (!Array.Exists(openings, opening => BareSpot.Of(window, surface).Overlaps(opening, surface.GirthMm, surface.IsClosed)))
                {
                    windows.Add(window);
                }
            }
        }

        return new ValueList<ContactWindow>(windows);
    }

    private static WindowLayout UnderEveryStrip(ILay lay, WindowLayout layout, WindowShape form, RuleSet rules)
    {
        if (lay is not IPlacedStrips placed)
        {
            return layout;
        }

        Area least = rules[RuleIds.LeastContactArea].Limit!.Value.ToArea();
        ValueList<PlacedStrip> strips = placed.PlaceStrips();
        bool conducts = lay.Stock.Tape.ConductsAtLaps;
        int before = int.MaxValue;
        while (true)
        {
            // Where laps conduct one window may join many strips, so that they are looked at anew after each.
            ValueList<PlacedStrip> untouched = new JoinedStrips(strips, layout, conducts, least).Untouched;
            if (untouched.Count == 0 || untouched.Count >= before)
            {
                return layout;
            }

            before = untouched.Count;
            foreach (PlacedStrip strip in conducts ? untouched.Take(1) : untouched)
            {
                layout = Under(strip, layout, form);
            }
        }
    }

    // In the middle of the strip's width, where along its length there is room.
    private static WindowLayout Under(PlacedStrip strip, WindowLayout layout, WindowShape form)
    {
        UnrolledSurface surface = layout.Surface;
        const int Tries = 24;
        for (int i = 0; i < Tries; i++)
        {
            double share = (i + 0.5) / Tries;
            double around = strip.FromAroundMm + (strip.AroundMm * (strip.RunsAround ? share : 0.5));
            double along = strip.FromAlongMm + (strip.AlongMm * (strip.RunsAround ? 0.5 : share)) + (strip.RunsAround ? strip.LeanMm * share : 0);
            double halfX = form.AlongMm / 2 / surface.Factor(around, default(NoSteps));
            along = Math.Min(Math.Max(along, halfX), surface.LengthMm - halfX);
            around = surface.IsClosed ? around : Math.Min(Math.Max(around, form.AroundMm / 2), surface.GirthMm - (form.AroundMm / 2));
            ContactWindow window = form.At(Length.FromMillimeters(along), Length.FromMillimeters(around));
            var spot = BareSpot.Of(window, surface);
            bool free = !layout.Spots.Any(other => spot.Overlaps(other, surface.GirthMm, surface.IsClosed))
                && !(surface.Surface is Panel panel && panel.Openings.Any(opening =>
                    opening.IsPlaced && spot.Overlaps(BareSpot.Of(opening, surface), surface.GirthMm, surface.IsClosed)));
            if (free)
            {
                return new WindowLayout(surface, [.. layout.Windows, window]);
            }
        }

        return layout;
    }
}
