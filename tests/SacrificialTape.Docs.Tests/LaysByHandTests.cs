using System.Globalization;
using Xunit;

namespace SacrificialTape.Docs.Tests;

/// <summary>Figures in the running text of the page on panels and shells, worked out here by hand formulas.</summary>
public class LaysByHandTests
{
    private const string Page = "docs/lays-panels-and-shells.md";

    [Fact]
    public void A_disc_with_a_manhole()
    {
        double lap = ((17 * 100) - 1500) / 16.0;
        double gap = 2 * Math.Sqrt((250 * 250) - (50 * 50));
        Says($"\\lceil 1490/90 \\rceil = {Math.Ceiling(1490 / 90.0):0}$, lap $(17 \\cdot 100 - 1500)/16 = {lap:0.0}$ mm, so the strips stand {100 - lap:0.0} mm apart");
        Says($"= {gap:0.0}$ mm about 200 mm, so its pieces measure $950 - {gap / 2:0.0} = {950 - (gap / 2):0.0}$ mm and $550 - {gap / 2:0.0} = {550 - (gap / 2):0.0}$ mm");
        Says($"= {2 * Math.Sqrt((750 * 750) - (650 * 650)):0.0}$ mm");
        Says($"1 x {950 - (gap / 2):0.0} mm");
        Says($"2 x {2 * Math.Sqrt((750 * 750) - (650 * 650)):0.0} mm");
    }

    [Fact]
    public void A_corrugated_sheet_a_tank_and_a_measured_area()
    {
        double web = Math.Sqrt((30 * 30) + (40 * 40));
        double pitch = 60 + 60 + (2 * web);
        Says($"= {web:0}$ mm, so $u = 60 + 60 + 2 \\cdot 50 = {pitch:0}$ mm and $U = {10 * pitch:0}$ mm; along, $\\lceil 2190/90 \\rceil = {Math.Ceiling(2190 / 90.0):0}$ strips");
        double course = (Math.PI * 18_000) + 10;
        Says($"= {Math.Floor(course / 1000):0}\\,{course % 1000:000}$ mm, more than the 50 m of a roll; $\\lceil (9040-10)/90 \\rceil = {Math.Ceiling(9030 / 90.0):0}$ courses");
        Says($"$40 \\cdot 1.15/0.08 = {40 * 1.15 / 0.08:0}$ m");
    }

    private static void Says(FormattableString text) =>
        Assert.Contains(text.ToString(CultureInfo.InvariantCulture), Repository.Read(Page), StringComparison.Ordinal);
}
