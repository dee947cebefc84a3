using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Contact;

/// <summary>The windows of a layout in the order a crew walks: station by station along, round and back; on a panel row by row from the bottom.</summary>
public sealed record MarkingList : IHasWorkings
{
    /// <summary>Puts windows in order.</summary>
    /// <param name="layout">The windows.</param>
    public MarkingList(WindowLayout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        this.Layout = layout;
        bool panel = layout.Surface.Surface is Panel;
        double girth = layout.Surface.GirthMm;
        (ContactWindow Window, double Along, double Around)[] places =
        [
            .. layout.Windows.Zip(layout.Spots, (window, spot) => (window, spot.X, spot.Y)),
        ];

        // A station is what a crew reaches without walking on: places within a millimetre of each other.
        var walk = new List<(ContactWindow Window, double Along, double Around)>(places.Length);
        bool back = false;
        foreach (IGrouping<double, (ContactWindow Window, double Along, double Around)> station in places
            .GroupBy(place => Math.Round(panel ? place.Around : place.Along))
            .OrderBy(static station => station.Key))
        {
            IOrderedEnumerable<(ContactWindow Window, double Along, double Around)> there = station.OrderBy(place => panel ? place.Along : place.Around);
            walk.AddRange(back ? there.Reverse() : there);
            back = !back;
        }

        this.Marks = new ValueList<WindowMark>(walk.Select((place, i) => new WindowMark(
            i + 1, place.Window, place.Along, place.Around, panel ? null : AroundKernel.Degrees(place.Around, girth, default(NoSteps)))));
    }

    /// <summary>The windows.</summary>
    public WindowLayout Layout { get; }

    /// <summary>The marks in order.</summary>
    public ValueList<WindowMark> Marks { get; }

    /// <summary>Where along and around are measured from.</summary>
    public string From => this.Layout.Surface.Surface switch
    {
        Panel => "Along from the left edge, around is up from the bottom edge.",
        Bend => "Along from the first tangent, on the outside of the bend; around from the line along the outside, clockwise seen along the pipe.",
        Shell { Axis: ShellAxis.Upright } => "Along is up from the lower seam; around from a line that the crew names and marks, clockwise seen upward.",
        _ => "Along from the start; around from the line along the top, clockwise seen along the pipe.",
    };

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        foreach (WindowMark mark in this.Marks.Where(static mark => mark.Turned is not null))
        {
            _ = AroundKernel.Degrees(UnitConversions.Millimeters(mark.Around), this.Layout.Surface.GirthMm, steps);
        }

        return steps.Under("Places around");
    }

    /// <summary>Where measured from, then each mark on a line of its own.</summary>
    public override string ToString() => string.Join('\n', this.Marks.Select(static mark => mark.ToString()).Prepend(this.From));
}
