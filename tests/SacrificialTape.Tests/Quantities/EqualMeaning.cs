using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Quantities;

/// <summary>Equal meaning is equal, whatever the unit it was stated in, and hashes alike.</summary>
[Properties(MaxTest = 500)]
public sealed class EqualMeaning
{
    // Whole tenths of a millimetre up to a kilometre, and whole 64ths of an inch.
    public static Arbitrary<int> Counts() => Gen.Choose(1, 10_000_000).ToArbitrary();

    [Property(Arbitrary = [typeof(EqualMeaning)])]
    public void Of_a_length_in_any_metric_unit(int tenths)
    {
        decimal mm = tenths / 10m;
        Length[] same =
        [
            Length.FromMillimeters((double)mm), Length.FromCentimeters((double)(mm / 10)), Length.FromMeters((double)(mm / 1000)),
            Length.FromMicrometers((double)(mm * 1000)), Length.FromKilometers((double)(mm / 1_000_000)),
        ];
        AllEqual(same.Select(static one => (object)Measure.Of(one)));
        AllEqual(same.Select(static one => (object)SpiralSetting.FromTrueLap(one)));
        AllEqual(same.Select(static one => (object)SpiralSetting.FromAdvance(one)));
        AllEqual(same.Select(static one => (object)new LayChoices(one, one)));
        AllEqual(same.Select(static one => (object)new TakeOffChoices(Length.Zero, one, Contingency.FromFraction(0.05))));
        AllEqual(same.Select(static one => (object)new Strip(Stock(), one, 1, StripPurpose.Other, true, Length.Zero, Length.Zero)));
        AllEqual(same.Select(static one => (object)new StraightPipe(Mm(100), one)));
        AllEqual(same.Select(static one => (object)new LongitudinalWelds(one, 2)));
        AllEqual(same.Select(static one => (object)new WeldWork([new GirthWelds(Mm(100), 1)], Stock(), one)));
        AllEqual(same.Select(static one => (object)CorrosionRate.FromLoss(one, Duration.FromYears365(4))));
        if (mm is >= 1 and <= 2000)
        {
            AllEqual(same.Select(static one => (object)new StripStock(Tape(), one, Length.FromMeters(30))));
            AllEqual(same.Select(static one => (object)new StripStock(Tape(), Mm(50), one)));
            AllEqual(same.Select(static one => (object)new StraightPipe(one, Length.FromMeters(3))));
            AllEqual(same.Select(static one => (object)new GirthWelds(one, 1)));
            AllEqual(same.Select(static one => (object)new SpiralGeometry(Mm(2000), one, SpiralSetting.FromTrueLap(Length.Zero))));
            AllEqual(same.Select(static one => (object)new WoundRoll(one + one, one, Mm(0.2))));
        }
    }

    [Property(Arbitrary = [typeof(EqualMeaning)])]
    public void Of_a_thin_layer_in_any_metric_unit(int given)
    {
        decimal um = 5 + (given % 9950 / 10m);
        Length[] same =
        [
            Length.FromMicrometers((double)um), Length.FromMillimeters((double)(um / 1000)),
            Length.FromCentimeters((double)(um / 10_000)), Length.FromMeters((double)(um / 1_000_000)),
        ];
        AllEqual(same.Select(static one => (object)new Foil(one)));
        AllEqual(same.Select(static one => (object)new Foil(Mm(2), one)));
        AllEqual(same.Select(static one => (object)new Adhesive(one)));
        AllEqual(same.Select(static one => (object)new FacingFilm(one)));
        AllEqual(same.Select(static one => (object)LinearLoss.Law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(1), one)));
    }

    [Property(Arbitrary = [typeof(EqualMeaning)])]
    public void Of_a_length_in_inches(int given)
    {
        decimal inches = (given % 6400 + 64) / 64m;
        Length[] same =
        [
            Length.FromInches((double)inches), Length.FromMillimeters((double)(inches * 25.4m)), Length.FromMils((double)(inches * 1000)),
        ];
        AllEqual(same.Select(static one => (object)Measure.Of(one)));
        AllEqual(same.Select(static one => (object)new StraightPipe(one, Length.FromMeters(3))));
        AllEqual([new Measure((double)inches, TradeUnit.Inch), new Measure((double)(inches * 25.4m), TradeUnit.Millimeter), new Measure((double)(inches * 2.54m), TradeUnit.Centimeter)]);
        AllEqual([Length.FromFeet(given % 1000 + 1), Length.FromInches((given % 1000 + 1) * 12)], static one => Measure.Of((Length)one));
    }

    [Property(Arbitrary = [typeof(EqualMeaning)])]
    public void Of_a_duration(int given)
    {
        int days = given % 40_000 + 1;
        AllEqual([Duration.FromDays(days), Duration.FromHours(days * 24), Duration.FromMinutes(days * 1440L)], static one => Lifetime.Of((Duration)one));
        AllEqual([Duration.FromYears365(days), Duration.FromDays(days * 365L), Duration.FromHours(days * 8760L)], static one => Lifetime.Of((Duration)one));
        AllEqual([new Measure(days, TradeUnit.Year), new Measure(days * 8760L, TradeUnit.Hour)]);
    }

    [Property(Arbitrary = [typeof(EqualMeaning)])]
    public void Of_a_density_an_area_and_a_rate(int given)
    {
        decimal kilograms = 6000 + (given % 20_000 / 10m);
        AllEqual(
            [Density.FromKilogramsPerCubicMeter((double)kilograms), Density.FromGramsPerCubicCentimeter((double)(kilograms / 1000))],
            static one => new Foil(Mm(0.1), null, (Density)one));
        decimal cm2 = given % 100_000 / 10m + 0.1m;
        AllEqual(
            [Area.FromSquareCentimeters((double)cm2), Area.FromSquareMeters((double)(cm2 / 10_000)), Area.FromSquareMillimeters((double)(cm2 * 100))],
            static one => new ContactWindows(3, (Area)one));
        AllEqual(
            [Area.FromSquareCentimeters((double)cm2 * 10_000), Area.FromSquareMeters((double)cm2)],
            static one => new BareContact((Area)one, new ContactWindows(1, Area.FromSquareCentimeters(0.1))));
        decimal mils = given % 1000 / 100m;
        AllEqual([CorrosionRate.FromMilsPerYear((double)mils), CorrosionRate.FromMicrometersPerYear((double)(mils * 25.4m))]);
        AllEqual([new Measure((double)mils, TradeUnit.Percent), new Measure((double)(mils / 100), TradeUnit.One)]);
    }

    [Property(Arbitrary = [typeof(EqualMeaning)])]
    public void Of_a_temperature(int given)
    {
        decimal celsius = (given % 4500 - 500) / 10m;
        AllEqual(
            [
                Temperature.FromDegreesCelsius((double)celsius), Temperature.FromKelvins((double)(celsius + 273.15m)),
                Temperature.FromDegreesFahrenheit((double)((celsius * 1.8m) + 32)),
            ],
            static one => new SteelCondition(serviceTemperature: (Temperature)one));
    }

    [Fact]
    public void Different_kinds_of_quantity_are_never_equal()
    {
        Assert.NotEqual(new Measure(1, TradeUnit.Millimeter), new Measure(1, TradeUnit.Year));
        Assert.NotEqual(new Measure(0, TradeUnit.Millimeter), new Measure(0, TradeUnit.DegreeCelsius));
        Assert.NotEqual(new Measure(1, TradeUnit.Millimeter), new Measure(1.0000000001, TradeUnit.Millimeter));
    }

    private static void AllEqual(IEnumerable<object> values) => AllEqual(values, static one => one);

    private static void AllEqual(IEnumerable<object> values, Func<object, object> make)
    {
        object[] all = [.. values.Select(make)];
        Assert.All(all, one =>
        {
            Assert.True(all[0].Equals(one), $"{all[0]} is not {one}.");
            Assert.Equal(all[0].GetHashCode(), one.GetHashCode());
        });
    }
}
