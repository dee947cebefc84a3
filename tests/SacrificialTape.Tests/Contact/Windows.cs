using FsCheck.Xunit;

namespace SacrificialTape.Tests.Contact;

[Properties(MaxTest = 1000)]
public sealed class Windows
{
    [Property]
    public void The_ratio_is_in_proportion_to_windows_and_against_area(ushort count, byte cm2, ushort tenths)
    {
        double window = cm2 + 1;
        double covered = (count * window / 1e4) + (tenths / 10.0) + 0.1;
        BareContact Of(int windows, double square, double area) =>
            new(Area.FromSquareMeters(area), new ContactWindows(windows, Area.FromSquareCentimeters(square)));
        double one = Of(count, window, covered).Ratio.SquareCentimetersPerSquareMeter;
        Near.Equal(count * window / covered, one, 1e-12);
        Near.Equal(one, Of(count * 2, window, covered * 2).Ratio.SquareCentimetersPerSquareMeter, 1e-12);
        Near.Equal(one / 2, Of(count, window, covered * 2).Ratio.SquareCentimetersPerSquareMeter, 1e-12);
        Near.Equal(one, Of(count * 2, window / 2, covered).Ratio.SquareCentimetersPerSquareMeter, 1e-12);
    }

    [Property]
    public void The_windows_needed_satisfy_the_rule_and_one_fewer_would_not(byte cm2, ushort tenths)
    {
        double window = (cm2 + 1) / 2.0;
        double covered = (tenths / 10.0) + 2;
        var wanted = BareRatio.FromSquareCentimetersPerSquareMeter(100);
        int needed = new BareContact(Area.FromSquareMeters(covered), new ContactWindows(1, Area.FromSquareCentimeters(window))).WindowsNeeded(wanted);
        Assert.False(Broken(needed));
        Assert.True(Broken(needed - 1));

        bool Broken(int count) => new BareContact(Area.FromSquareMeters(covered), new ContactWindows(count, Area.FromSquareCentimeters(window)))
            .Judge(RuleSet.Default, "A-1").Any(static one => one.Rule.Id == RuleIds.MinimumBareRatio);
    }

    [Property]
    public void A_surface_that_is_all_window_is_bare_throughout(byte count, ushort square)
    {
        // The windows are as large as the whole: the ratio must be readable, whatever the last digit of a product.
        double window = ((square % 9999) + 1) / 1e4;
        int windows = count + 1;
        var contact = new BareContact(Area.FromSquareMeters(windows * (window * 1e4 / 1e4)), new ContactWindows(windows, Area.FromSquareMeters(window)));
        Near.Equal(10_000, contact.Ratio.SquareCentimetersPerSquareMeter, 1e-12);
    }

    [Fact]
    public void What_is_said_of_every_painted_line() => Assert.Equal(
        [RuleIds.MinimumBareRatio, RuleIds.WindowPositionsUnknown, RuleIds.OldPaint],
        new BareContact(Area.FromSquareMeters(10), new ContactWindows(0, Area.FromSquareCentimeters(10)))
            .Judge(RuleSet.Default, "A-1").Select(static one => one.Rule.Id));

    [Fact]
    public void Bad_input_is_refused()
    {
        var windows = new ContactWindows(20, Area.FromSquareCentimeters(1000));
        Errors.Refused(() => new BareContact(Area.FromSquareMeters(1), windows), "covered", "1 m2", "at least 2 m2 (the windows)");
        Errors.Refused(() => new BareContact(Area.Zero, windows), "covered", "0 m2", "more than 0 m2");
        Errors.Refused(static () => new ContactWindows(-1, Area.FromSquareCentimeters(10)), "count", "-1 windows", "at least 0");
        Errors.Refused(static () => new ContactWindows(1, Area.Zero), "windowArea", "0 cm2", "more than 0 and at most 10000 cm2");
        Errors.Refused(static () => new ContactWindows(1, Area.FromSquareMeters(10)), "windowArea", "100000 cm2");
    }
}
