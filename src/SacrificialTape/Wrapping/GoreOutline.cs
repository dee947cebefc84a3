using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>
/// The outline of a gore without its lap, at stations from the low edge to its end. Between stations it is cut straight;
/// where the outline bulges, the stations beside are set out by what the straight cut would lose.
/// </summary>
internal sealed class GoreOutline
{
    private const int Samples = 16;

    private readonly List<Station> stations = [];

    private GoreOutline()
    {
    }

    internal IReadOnlyList<Station> Stations => this.stations;

    /// <summary>The outline of one of n gores; curved pieces of the section get as many stations as stated.</summary>
    internal static GoreOutline Of(Meridian meridian, double count, double endMm, int pieces)
    {
        var outline = new GoreOutline();
        ReadOnlySpan<double> joints = meridian.Joints;
        var spots = new List<(double Along, MeridianPoint At)>();
        var losses = new List<double>();
        for (int segment = 0; segment < joints.Length - 1 && joints[segment] < endMm; segment++)
        {
            bool last = segment == joints.Length - 2 || joints[segment + 1] >= endMm;
            double from = joints[segment];
            double to = last ? endMm : joints[segment + 1];
            int steps = meridian.IsStraight(segment) ? 1 : pieces;
            for (int i = 0; i < steps; i++)
            {
                // A corner belongs to the steeper piece, which asks for the wider gore.
                double along = from + ((to - from) * i / steps);
                spots.Add((along, i == 0 ? meridian.AtStartOf(segment) : meridian.At(along)));
            }

            for (int i = 0; i < steps; i++)
            {
                losses.Add(steps == 1 ? 0 : Loss(meridian, count, from + ((to - from) * i / steps), from + ((to - from) * (i + 1) / steps)));
            }
        }

        spots.Add((endMm, meridian.At(endMm)));
        for (int i = 0; i < spots.Count; i++)
        {
            double chord = Math.Max(i == 0 ? 0 : losses[i - 1], i == losses.Count ? 0 : losses[i]);
            outline.stations.Add(new(spots[i].Along, spots[i].At, chord, Half(spots[i].At, count) + chord));
        }

        return outline;
    }

    /// <summary>Half a gore by the cone that touches the surface: (r / m) tan(m pi / n), and r pi / n without slope.</summary>
    internal static double Half(in MeridianPoint spot, double count)
    {
        double turn = spot.Slope * Math.PI / count;
        return turn < 1e-8 ? spot.RadiusMm * Math.PI / count : spot.RadiusMm / spot.Slope * Math.Tan(turn);
    }

    /// <summary>The gores that a station asks for, so that gore and lap fit the strip there.</summary>
    internal static double Count(in Station station, double widthMm, double lapMm)
    {
        double room = ((widthMm - lapMm) / 2) - station.ChordMm;
        double share = station.At.Slope / station.At.RadiusMm * room;
        return WithAllowance.Ceiling(share < 1e-8 ? Math.PI * station.At.RadiusMm / room : Math.PI * station.At.Slope / Math.Atan(share));
    }

    // What the straight cut between two spots loses of the outline at most.
    private static double Loss(Meridian meridian, double count, double from, double to)
    {
        double low = Half(meridian.At(from), count);
        double high = Half(meridian.At(to), count);
        double most = 0;
        for (int i = 1; i < Samples; i++)
        {
            double share = (double)i / Samples;
            most = Math.Max(most, Half(meridian.At(from + ((to - from) * share)), count) - (low + ((high - low) * share)));
        }

        return most;
    }

    /// <summary>A station: its place, the surface there, what it is set out by, and half the gore with that.</summary>
    internal readonly record struct Station(double AlongMm, MeridianPoint At, double ChordMm, double HalfMm);
}
