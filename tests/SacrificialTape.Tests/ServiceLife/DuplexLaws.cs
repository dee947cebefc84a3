using FsCheck.Xunit;

namespace SacrificialTape.Tests.ServiceLife;

/// <summary>Zinc and paint together: a range, ordered, never below the zinc alone.</summary>
public sealed class DuplexLaws
{
    [Property]
    public void Never_below_the_zinc_alone_and_in_order(ushort zinc, ushort moreZinc, ushort paint, ushort morePaint)
    {
        DuplexLife duplex = Of(zinc, zinc + moreZinc, paint + 1, paint + 1 + morePaint);
        Assert.True(duplex.Earliest >= duplex.ZincEarliest);
        Assert.True(duplex.Latest >= duplex.ZincLatest);
        Assert.True(duplex.Earliest < duplex.Latest);
        Assert.Equal(3, duplex.ByFactor.Count);
        foreach (DuplexRange range in duplex.ByFactor)
        {
            Assert.True(range.Earliest >= duplex.ZincEarliest && range.Earliest >= duplex.Paint.Earliest);
            Assert.True(range.Earliest < range.Latest);
            Assert.True(range.Earliest >= duplex.Earliest && range.Latest <= duplex.Latest);
        }
    }

    [Property]
    public void More_zinc_or_more_paint_never_shortens_it(ushort zinc, ushort paint, byte more)
    {
        DuplexLife less = Of(zinc, zinc, paint + 1, paint + 1);
        Assert.True(Of(zinc + more, zinc + more, paint + 1, paint + 1).Earliest >= less.Earliest);
        Assert.True(Of(zinc, zinc, paint + 1 + more, paint + 1 + more).Earliest >= less.Earliest);
    }

    [Fact]
    public void A_factor_of_one_is_the_sum()
    {
        var sum = new DuplexFactor(1, 1, Basis.OwnExperience("made up"));
        var duplex = new DuplexLife(Years(12), Years(30), new PaintFilm(Years(5), Years(9)), [sum]);
        Near.Equal(17, duplex.Earliest.Duration.Years365, 1e-12);
        Near.Equal(39, duplex.Latest.Duration.Years365, 1e-12);
    }

    [Fact]
    public void Both_ends_on_which_sources_disagree_are_shown()
    {
        Assert.Equal([1.4, 1.5, 1.5], DuplexFactor.Published.Select(static one => one.Lowest));
        Assert.Equal([2.7, 2.3, 2.5], DuplexFactor.Published.Select(static one => one.Highest));
    }

    [Fact]
    public void Zinc_that_loses_nothing_lasts_for_ever_under_paint()
    {
        DuplexLife duplex = new(Years(10), Lifetime.Unlimited, new PaintFilm(Years(5), Years(9)));
        Assert.False(duplex.Earliest.IsUnlimited);
        Assert.True(duplex.Latest.IsUnlimited);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        var basis = Basis.OwnExperience("made up");
        Assert.Throws<ArgumentOutOfRangeException>(() => new DuplexFactor(0.9, 2, basis));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DuplexFactor(2, 1.9, basis));
        Assert.Throws<ArgumentOutOfRangeException>(static () => new PaintFilm(Years(0), Years(1)));
        Assert.Throws<ArgumentOutOfRangeException>(static () => new PaintFilm(Years(2), Years(1)));
        Assert.Throws<ArgumentOutOfRangeException>(static () => new DuplexLife(Years(2), Years(1), new PaintFilm(Years(1), Years(1))));
        Assert.Throws<ArgumentException>(static () => new DuplexLife(Years(1), Years(2), new PaintFilm(Years(1), Years(1)), []));
    }

    private static DuplexLife Of(double zincEarliest, double zincLatest, double paintEarliest, double paintLatest) =>
        new(Years(zincEarliest), Years(zincLatest), new PaintFilm(Years(paintEarliest), Years(paintLatest)));

    private static Lifetime Years(double years) => Lifetime.Of(Duration.FromYears365(years));
}
