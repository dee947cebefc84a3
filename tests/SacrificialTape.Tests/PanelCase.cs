using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests;

/// <summary>A panel with openings in places, and a strip for it.</summary>
public sealed record PanelCase(int Form, double WidthMm, double HeightMm, double StripMm, double LapMm, int Openings, int Seed)
{
    internal PanelDirection Direction => this.Seed % 2 == 0 ? PanelDirection.AlongWidth : PanelDirection.AlongHeight;

    internal double HoleMm => Math.Max(1, this.WidthMm * (5 + (this.Seed % 90)) / 100);

    /// <summary>Openings are tried in turn, and those that do not fit are left out.</summary>
    internal Panel Panel(bool places = true)
    {
        var random = new Random(this.Seed);
        var kept = new List<PanelOpening>();
        for (int i = 0; i < this.Openings; i++)
        {
            double size = Math.Min(this.WidthMm, this.HeightMm) * (0.03 + (0.5 * random.NextDouble()));
            PanelOpening one = random.Next(2) == 0
                ? PanelOpening.Circular(Mm(Math.Max(1, size)))
                : PanelOpening.Rectangular(Mm(Math.Max(1, size)), Mm(Math.Max(1, size * (0.2 + (2 * random.NextDouble())))));
            Length right = Mm(this.WidthMm * (random.NextDouble() - 0.5));
            Length up = Mm(this.HeightMm * (random.NextDouble() - 0.5));
            try
            {
                kept.Add(places ? one.At(right, up) : one);
                _ = this.With(kept);
            }
            catch (ArgumentException)
            {
                kept.RemoveAt(kept.Count - 1);
            }
        }

        return this.With(kept);
    }

    internal PanelLay Lay(LayChoices? choices = null, bool places = true) =>
        new(this.Panel(places), Stock(this.StripMm), this.Direction, Mm(this.LapMm), choices ?? Choices());

    private Panel With(IEnumerable<PanelOpening> openings) => this.Form switch
    {
        0 => new RectangularPanel(Mm(this.WidthMm), Mm(this.HeightMm), new ValueList<PanelOpening>(openings)),
        1 => new CircularPanel(Mm(this.WidthMm), new ValueList<PanelOpening>(openings)),
        _ => new AnnularPanel(Mm(this.WidthMm), Mm(this.HoleMm), new ValueList<PanelOpening>(openings)),
    };
}
