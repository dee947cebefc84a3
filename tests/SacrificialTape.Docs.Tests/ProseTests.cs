using System.Globalization;
using SacrificialTape.Contact;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;
using UnitsNet;
using Xunit;

namespace SacrificialTape.Docs.Tests;

/// <summary>Figures in running text, worked out here by hand formulas and held against both page and library.</summary>
public class ProseTests
{
    private const double Circumference = Math.PI * 60.3;

    [Fact]
    public void Twenty_along_the_pipe_is_eighteen_across_the_strip()
    {
        // Bisection on w / cos(theta) - p = o: another way than the closed form of the library.
        double low = 1;
        double high = 200;
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            bool lapTooLarge = (100 / Math.Cos(Math.Atan(middle / Circumference))) - middle > 20;
            (low, high) = lapTooLarge ? (middle, high) : (low, middle);
        }

        double angle = Math.Atan(low / Circumference);
        double lap = 20 * Math.Cos(angle);
        Assert.Equal(lap, TrueLap(SpiralSetting.FromLapAlongPipe(Length.FromMillimeters(20))), 1e-9);
        Says("docs/spiral-lay.md", $"a true lap of {lap:0.0} mm: $20 \\cos {angle * 180 / Math.PI:0.00}° = {lap:0.00}$");
        Says("README.md", $"it is {lap:0.0} mm");
        Says("docs/first-answer.md", $"| lap {lap:0.0} mm |");
    }

    [Fact]
    public void Marks_eighty_apart_give_twenty_six()
    {
        double advance = 80 / Math.Sqrt(1 + Math.Pow(80 / Circumference, 2));
        Assert.Equal(100 - advance, TrueLap(SpiralSetting.FromLapBetweenMarks(Length.FromMillimeters(20))), 1e-9);
        Says("docs/spiral-lay.md", $"$C = \\pi \\cdot 60.3 = {Circumference:0.000}$ mm");
        Says("docs/spiral-lay.md", $"= {advance:0.000}$ mm; true lap $100 - {advance:0.000} = {100 - advance:0.000}$ mm");
        Says("docs/spiral-lay.md", $"give {100 - advance:0.0} mm and use some {100 * ((80 / advance) - 1):0} % more tape");
    }

    [Fact]
    public void Lives_by_hand()
    {
        double atKnee = Math.Pow(20, 0.813);
        double slope = 0.813 * Math.Pow(20, -0.187);
        double earliest = 20 + (((80 / 2.1) - atKnee) / slope);
        Says("docs/zinc-life.md", $"$80/2.1 = {80 / 2.1:0.00}$ and $80/0.7 = {80 / 0.7:0.00}$");
        Says("docs/zinc-life.md", $"$20^{{0.813}} = {atKnee:0.0000}$");
        Says("docs/zinc-life.md", $"= {slope:0.0000}$, so the earliest is $20 + ({80 / 2.1:0.000} - {atKnee:0.0000})/{slope:0.0000} = {earliest:0.00}$");
        Says("docs/zinc-life.md", $"linear: {80 / 2.1:0.0} a to {80 / 0.7:0.0} a");
        Says("docs/zinc-life.md", $"power law, mean exponent: {earliest:0.00} a to {20 + (((80 / 0.7) - atKnee) / slope):0.0} a");
        Says("docs/zinc-life.md", $"$0.8 \\cdot 95 / 1.6 = {0.8 * 95 / 1.6:0.0}$");
        Says("docs/zinc-life.md", $"{85 / 4.2:0.00} a to {85 / 2.1:0.00} a");
    }

    [Fact]
    public void Lives_with_uncertainty_by_hand()
    {
        const string Page = "docs/life-with-uncertainty.md";
        double median = Math.Sqrt(0.7 * 2.1);
        double spread = Math.Log(3) / (2 * 1.6449);
        double rate = median * Math.Exp(1.2816 * spread);
        Says(Page, $"= {median:0.0000}$ and $s = \\ln 3/(2 \\cdot 1.6449) = {spread:0.0000}$");
        Says(Page, $"the rate is $1.2124\\,e^{{{1.2816 * spread:0.0000}}} = {rate:0.0000}$, and $80/1.8601 = {80 / rate:0.0}$ years");
    }

    [Fact]
    public void Remaining_lives_by_hand()
    {
        const string Page = "docs/readings-to-life.md";
        double[] um = [72, 74, 71, 76, 73, 70, 75, 72];
        double mean = um.Average();
        double deviation = Math.Sqrt(um.Sum(one => (one - mean) * (one - mean)) / 7);
        double half = 2.3646 * deviation / Math.Sqrt(8);
        Says(Page, $"mean of {mean:0.000} um leaves a loss of {100 - mean:0.000} um in 12 years, so $({mean:0.000} - 20) \\cdot 12/{100 - mean:0.000} = {(mean - 20) * 12 / (100 - mean):0.0}$");
        Says(Page, $"$2.365 \\cdot {deviation:0.000}/\\sqrt{{8}} = {half:0.00}$ um, and the earliest end $({mean - half:0.00} - 20) \\cdot 12/{100 - mean + half:0.00} = {(mean - half - 20) * 12 / (100 - mean + half):0.0}$");
        double area = Math.PI / 4 * 0.2 * 0.09;
        double cost = 215 + (60 * area);
        Says("docs/patches-and-repair.md", $"= {area:0.00000}$ m2, so patching costs $180 + 35 + 60 \\cdot {area:0.00000} = {cost:0.00}$");
        Says("docs/patches-and-repair.md", $"= {0.03 / (1 - Math.Pow(1.03, -9)):0.00000}$, or {cost * 0.03 / (1 - Math.Pow(1.03, -9)):0.00} a year");
        Says("docs/patches-and-repair.md", $"= {0.03 / (1 - Math.Pow(1.03, -38)):0.00000}$ of 1450, or {1450 * 0.03 / (1 - Math.Pow(1.03, -38)):0.00}");
    }

    [Fact]
    public void Paint_over_zinc_by_hand()
    {
        double zinc = 80 / 2.1;
        Says("docs/limits.md", $"$1.4\\,({zinc:0.0} + 10) = {1.4 * (zinc + 10):0.0}$ and $2.7\\,(114.3 + 15) = {2.7 * ((80 / 0.7) + 15):0.0}$");
    }

    [Fact]
    public void First_year_rates_by_hand()
    {
        const string Page = "docs/exposure.md";
        double sulfur = 0.0129 * Math.Pow(10, 0.44) * Math.Exp(3.45);
        double chloride = 0.0175 * Math.Pow(3, 0.57) * Math.Exp(1.45);
        Says(Page, $"$10^{{0.44}} = {Math.Pow(10, 0.44):0.0000}$ and $e^{{3.45}} = {Math.Exp(3.45):0.000}$");
        Says(Page, $"= {sulfur:0.0000}$; $3^{{0.57}} = {Math.Pow(3, 0.57):0.0000}$ and $e^{{1.45}} = {Math.Exp(1.45):0.0000}$");
        Says(Page, $"= {chloride:0.0000}$; together {sulfur + chloride:0.0000}");
        double share = Math.Sqrt((0.01 * 0.01) + Math.Pow(4.0 / 357, 2));
        Says(Page, $"$4/357 = {400.0 / 357:0.00}$ %, together {100 * share:0.00} %; twice that of 2 um/a is {2 * share * 2:0.000}");
        Says(Page, $"$10^{{0.813}} = {Math.Pow(10, 0.813):0.0000}$ and $13/{Math.Pow(10, 0.813):0.0000} = {13 / Math.Pow(10, 0.813):0.0000}$");
    }

    [Fact]
    public void Loss_laws_by_hand()
    {
        double ounce = 28.349523125 / (0.3048 * 0.3048);
        double first = 0.35 * ounce / 7.14;
        double later = 0.09 * ounce / 7.14;
        Says("docs/water-and-soil.md", $"is {ounce:0.00} g/m2, or {ounce / 7.14:0.00} um at 7.14 g/cm3, so $q_1 = {first:0.000}$ and $q_2 = {later:0.000}$; $2 + (80 - {2 * first:0.000})/{later:0.000} = {2 + ((80 - (2 * first)) / later):0.00}$");
        Says("docs/water-and-soil.md", $"0.032 oz/ft2 a year, {0.032 * ounce / 7.14:0.00} um/a");
        double tenth = Math.Pow(10, 0.813);
        Says("docs/loss-laws.md", $"$2.1 \\cdot {tenth:0.0000} = {2.1 * tenth:0.00}$, and its slope is $0.813 \\cdot {2.1 * tenth:0.00}/10 = {0.0813 * 2.1 * tenth:0.000}$");
        Says("docs/loss-laws.md", $"$10 + (80-64)/3 = {10 + (16 / 3.0):0.00}$");
        Says("docs/loss-laws.md", $"$20 + (80-14)/{6 / 13.0:0.0000} = {20 + (66 * 13 / 6.0):0}$");
    }

    [Fact]
    public void A_ledger_by_hand()
    {
        double cover = Math.PI * 0.1683 * 24 / 0.1;
        double laid = cover / 0.8;
        Says("docs/take-off.md", $"= {cover:0.000}$ m of cover");
        Says("docs/take-off.md", $"/ 0.8 = {laid:0.000}$ m, so the lap is {laid - cover:0.000} m");
        Says("docs/take-off.md", $"cover       {cover,10:0.000000}");
        Says("docs/take-off.md", $"lap          {laid - cover:0.00000}");
    }

    [Fact]
    public void Heads_shells_and_flanges_by_hand()
    {
        const string Page = "docs/surfaces-fittings.md";
        double e = Math.Sqrt(0.75);
        double dish = Math.PI + (0.25 * Math.PI / e * Math.Log((1 + e) * 2));
        Says(Page, $"= {e:0.00000}$; $\\pi + \\frac{{0.25\\,\\pi}}{{{e:0.00000}}}\\ln({1 + e:0.00000} \\cdot 2) = {dish:0.0000}$ m²");
        double outside = EllipsoidalHead.TwoToOneFromInside(Length.FromMeters(2), Length.FromMillimeters(10), Length.Zero).Area.SquareMeters;
        Says(Page, $"would have missed {outside - dish:0.0000} m² on the second, {100 * (outside - dish) / outside:0.0} %");

        double phi = Math.Asin(790.0 / 1800);
        double phiKorbbogen = Math.Asin((1000.0 - 318) / (1610 - 318));
        Says(Page, $"Klöpper sum lies {2010 - (1800 * Math.Cos(phi)) - 10 - ((0.1935 * 2000) - 4.55):0.0} mm below");
        Says(Page, $"Korbbogen sum {(0.255 * 2000) - 6.35 - (1610 - (1292 * Math.Cos(phiKorbbogen)) - 10):0.0} mm above");

        double circle = Math.PI * 0.61 * 0.61 / 4;
        double hole = (24 * Math.PI) - 0.96 - new Shell(
            Length.FromMeters(3), Length.FromMeters(8), ShellAxis.Upright,
            [ShellOpening.Round(Length.FromMillimeters(610)), ShellOpening.Rectangular(Length.FromMillimeters(1200), Length.FromMillimeters(800))]).Area.SquareMeters;
        Says(Page, $"= {24 * Math.PI:0.000}$ m²; the door takes 0.960 m², and the circle of the manway {circle:0.000} m², which the curve makes {hole:0.000} m²");
        Says(Page, $"22.3 = {Math.Floor(Math.PI * 229 * 22.3 / 1000):0}\\,{(Math.PI * 229 * 22.3) % 1000:000}$ mm²");
        double back = Math.PI / 4 * ((229 * 229) - (114.3 * 114.3) - (8 * 19 * 19));
        Says(Page, $"= {Math.Floor(back / 1000):0}\\,{back % 1000:000}$ mm²");
    }

    [Fact]
    public void Costs_by_hand()
    {
        double area = Math.PI * 0.1683 * 24;
        double left = 0.653303 + 30.724067;
        double zinc = left * 0.1 * 0.0001 * 7140;
        double total = 540 + Math.Round(area * 0.5 * 50, 2) + 360 + Math.Round(area * 1.10, 2) + Math.Round(zinc * 0.80, 2) + 75;
        Says("docs/cost.md", $"$\\pi \\cdot 0.1683 \\cdot 24 = {area:0.000}$ m2. Six rolls are {6 * 90}; {area:0.000} m2 at 0.5 h and 50 an hour are {area * 0.5 * 50:0.00}; two days are {2 * 180}");
        Says("docs/cost.md", $"solvent is ${area:0.000} \\cdot 1.10 = {area * 1.10:0.00}$");
        Says("docs/cost.md", $"are {left:0.000} m, which is {zinc:0.000} kg of zinc, or {zinc * 0.80:0.00}. With the permit, {total:0.00}.");
        Says("docs/cost.md", $"Total         {total:0.00} EUR, {total / area:0.00} EUR per m2");
    }

    [Fact]
    public void Worth_over_time_by_hand()
    {
        // By repeated multiplication and sums of single payments, not by the closed forms of the library.
        double grown = Grown(10);
        double each = Enumerable.Range(1, 20).Sum(year => 1 / Grown(year));
        double visits = (1 / Grown(5)) + (1 / Grown(10)) + (1 / Grown(15));
        double twice = 6000 * (1 + (1 / grown));
        double thick = 9000 + (200 * visits);
        Says("docs/cost.md", $"$1.06^{{10}} = {grown:0.000000}$, so $v = {1 / grown:0.000000}$, $a = (1 - {1 / grown:0.000000})/0.06 = {Enumerable.Range(1, 10).Sum(year => 1 / Grown(year)):0.00000}$ and $c = {1 / Enumerable.Range(1, 10).Sum(year => 1 / Grown(year)):0.000000}$");
        Says("docs/cost.md", $"$1000/(1 - {1 / grown:0.000000}) = {Enumerable.Range(0, 100).Sum(time => 1000 / Grown(10 * time)):0.00}$");
        Says("docs/cost.md", $"$c = {1 / each:0.0000000}$. One layer bought twice is $6000\\,(1 + 1.06^{{-10}}) = {twice:0.00}$");
        Says("docs/cost.md", $"${twice:0.00} \\cdot {1 / each:0.0000000}/100 = {twice / each / 100:0.000}$ per m2 and year");
        Says("docs/cost.md", $"$9000 + 200 \\cdot {visits:0.000000} = {thick:0.00}$, or {thick / each / 100:0.000}.");
        Says("docs/cost.md", $"should one layer last 20 years, it costs {6000 / each / 100:0.000}.");

        static double Grown(int years) => Enumerable.Repeat(1.06, years).Aggregate(1.0, static (all, one) => all * one);
    }

    [Fact]
    public void Windows_at_their_places_by_hand()
    {
        const string Page = "docs/contact-layout.md";
        Says(Page, $"= {Math.Sqrt((2960.0 * 2960) + (450 * 450)):0.0}$ mm");
        double girth = Math.PI * 219.1;
        double pitch = 3000 / 9.0;
        Says(Page, $"the girth is {girth:0.0} mm, so a square metre takes {1e6 / girth:0.0} mm of pipe");
        Says(Page, $"at {pitch:0} mm there are four whole pitches in {4 * pitch:0} mm. Between two windows half a pitch is {pitch / 2:0.0} mm, half the girth {girth / 2:0.0} mm");
        double along = (pitch / 2) - 25;
        double around = (girth / 2) - 25;
        Says(Page, $"$\\sqrt{{{along:0.0}^2 + {around:0.0}^2}} = {Math.Sqrt((along * along) + (around * around)):0.0}$ mm");
    }

    [Fact]
    public void Voltage_lost_by_hand()
    {
        const string Page = "docs/contact-voltage.md";
        double steel = 25 / (0.3048 * 0.3048);
        double amperes = steel / 5 * 0.25;
        Says(Page, $"25 mA/ft2 are {steel:0.0} mA/m2, a fifth of it {steel / 5:0.00} mA/m2; a window of 25 cm2 at 100 cm2/m2 serves 0.25 m2, so {amperes:0.00} mA. The adhesive is 5/25 = 0.2 ohm: {amperes * 0.2:0.000} mV");
        Says(Page, $"$3\\pi/32 = {3 * Math.PI / 32:0.0000}$ (form A");
        Says(Page, $"$1/\\pi = {1 / Math.PI:0.0000}$ (form B");
        double sum = 8e3 + (4e3 / Math.Sqrt(2));
        double a = 1.25e-3 + (3 * Math.PI * 1e-7 / 512 * sum);
        double b = 1.25e-3 + (1e-7 / (16 * Math.PI) * sum);
        Says(Page, $"they differ by {100 * ((b / a) - 1):0.00} %");
    }

    [Fact]
    public void Windows_by_hand()
    {
        Says("docs/contact.md", $"are 1000 cm2 on 12 m2, or {25 * 40 / 12.0:0.0} cm2/m2; 1200 cm2 are wanted, which is {1200 / 40} windows");
        var contact = new BareContact(Area.FromSquareMeters(12), new ContactWindows(25, Area.FromSquareCentimeters(40)));
        Assert.Equal(1200 / 40, contact.WindowsNeeded(BareRatio.FromSquareCentimetersPerSquareMeter(100)));
    }

    [Fact]
    public void Zinc_beside_bare_steel_by_hand()
    {
        double capacity = 2 * 96485.332 / (3.6 * 65.38);
        Says("docs/galvanic.md", $"$2 \\cdot 96485.332 / (3.6 \\cdot 65.38) = {capacity:0.00}$");
        double Recession(double molar, double density) => 0.01 * 31_536_000 * molar / (2 * 96485.332 * density);
        Says("docs/galvanic.md", $"zinc of 7.13 g/cm3 recedes by {Recession(65.38, 7.13):0.0} um a year and carbon steel by {Recession(55.845, 7.86):0.0}");

        // 50 um/a of steel as a current, five sevenths of it on each area of zinc.
        double demand = 50e-6 * 7860 * 1000 / 55.845 * 2 * 96485.332 / 31_536_000;
        double kilograms = demand * 5 / 7 * 8760 / capacity;
        Says("docs/galvanic.md", $"{demand * 1000:0.00} mA/m2 times 5/7 is {demand * 5000 / 7:0.0} mA for each m2 of zinc; an ampere takes {8760 / capacity:0.000} kg a year, so {kilograms:0.0000} kg/m2 or {kilograms / 7140 * 1e6:0.00} um. With 2.1 um of its own, {0.8 * 80:0} um are gone after {64 / ((kilograms / 7140 * 1e6) + 2.1):0.00} years");
        double limit = 4 * 96485.332 * 2e-9 * 0.26 / 1e-4;
        Assert.InRange(limit / demand, 45, 55);
        Assert.InRange(2 * limit / demand, 85, 95);
        Says("docs/galvanic.md", $"is {limit:0} A/m2 under 100 um: some fifty to ninety times the yearly average of C3");
        Says("docs/reach.md", $"$\\lambda_s = \\sqrt{{5 \\cdot 100 \\cdot 1}} = {Math.Sqrt(500):0.00}$ mm");
        Says("docs/reach.md", $"0.05 S/m, 100 um, 0.1 A/m2 and 0.25 V that is {Math.Sqrt(2 * 0.05 * 100 * 0.25 / 0.1):0.0} mm");
    }

    [Fact]
    public void Diameters_differ_where_the_pages_say_so()
    {
        int[] sizes = [15, 20, 25, 32, 40, 50, 65, 80, 100, 125, 150, 200, 250, 300, 350, 400];
        int[] ambiguous = [.. sizes.Where(dn => PipeSize.FromDn(dn, PipeStandard.AsmeB3610M) is var asme
            && PipeSize.FromDn(dn, PipeStandard.Iso4200Series1) is var iso
            && asme.OutsideDiameter.Millimeters != iso.OutsideDiameter.Millimeters)];
        Says("docs/which-type.md", $"At DN {string.Join(", ", ambiguous[..^1])} and {ambiguous[^1]} the standards");
    }

    [Fact]
    public void UnitsNet_still_compares_by_unit_as_the_troubleshooting_says()
    {
#pragma warning disable CS0618 // That it is obsolete is part of what the page says.
        Assert.False(Length.FromMeters(1).Equals(Length.FromCentimeters(100)));
#pragma warning restore CS0618
        Says("docs/precision.md", $"`Length.FromMeters(1).Equals(Length.FromCentimeters(100))` is false");
    }

    private static double TrueLap(SpiralSetting setting) =>
        new SpiralGeometry(Length.FromMillimeters(60.3), Length.FromMillimeters(100), setting).TrueLap.Millimeters;

    private static void Says(string page, FormattableString text) => Assert.Contains(
        text.ToString(CultureInfo.InvariantCulture), Repository.Read(page), StringComparison.Ordinal);
}
