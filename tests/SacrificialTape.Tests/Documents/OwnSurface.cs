using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>A surface of a host's own: a tile.</summary>
internal sealed record OwnSurface(Measure Side, int Tiles) : Surface
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<OwnSurface>("tile", Read, Write);

    public override Area Area => Area.FromSquareMillimeters(this.Tiles * this.Side.ToLength().Millimeters * this.Side.ToLength().Millimeters);

    public override string Description => $"{this.Tiles} tile(s) of {this.Side}";

    public override Workings ShowWorkings() => new RectangularPanel(this.Side.ToLength(), this.Side.ToLength()).ShowWorkings();

    private static OwnSurface? Read(FormReader reader)
    {
        Measure side = reader.Measure("side", TradeUnit.Millimeter);
        int tiles = reader.Count("tiles");
        return reader.Make(() => new OwnSurface(side, tiles));
    }

    private static void Write(FormWriter writer, OwnSurface tile)
    {
        writer.Measure("side", tile.Side);
        writer.Count("tiles", tile.Tiles);
    }
}
