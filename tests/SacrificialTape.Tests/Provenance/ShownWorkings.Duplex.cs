namespace SacrificialTape.Tests.Provenance;

/// <content>Paint over zinc.</content>
public sealed partial class ShownWorkings
{
    [Fact]
    public static void Of_zinc_and_paint_together()
    {
        static Lifetime Years(double years) => Lifetime.Of(Duration.FromYears365(years));
        var duplex = new DuplexLife(Years(15.5), Years(33), new PaintFilm(Years(8.25), Years(12)));
        Checked(duplex);
        Assert.Equal(
            duplex.ByFactor.SelectMany(static one => new[] { one.Earliest.Duration.Years365, one.Latest.Duration.Years365 }),
            duplex.ShowWorkings().Steps.Select(static step => step.Result.Number));
    }
}
