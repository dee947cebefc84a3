using BenchmarkDotNet.Attributes;
using SacrificialTape.Contact;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Benchmarks;

/// <summary>Which of 10 000 strips touch bare steel: rings, strips along, and patches in a chequer. Aim: under 100 ms.</summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class ContactBenchmarks
{
    private const int Strips = 10_000;

    private ValueList<PlacedStrip> strips = [];
    private WindowLayout? layout;

    /// <summary>How the strips lie.</summary>
    [Params("rings", "along", "patches")]
    public string Lie { get; set; } = "rings";

    [GlobalSetup]
    public void Make()
    {
        var stock = new StripStock(new Tape(new Foil(Length.FromMillimeters(0.1)), new Adhesive(Length.FromMillimeters(0.025))), Length.FromMillimeters(100), Length.FromMeters(50));
        (Surface surface, this.strips) = this.Lie switch
        {
            "rings" => Placed(new RingLay(new StraightPipe(Length.FromMillimeters(323.9), Length.FromMeters(800.02)), stock, Length.FromMillimeters(20))),
            "along" => Placed(new ShellLay(
                new Shell(Length.FromMeters(99), Length.FromMeters(20), ShellAxis.Upright), Narrow(stock), ShellDirection.AlongAxis, Length.FromMillimeters(10))),
            _ => Chequer(),
        };
        _ = UnrolledSurface.TryUnroll(surface, out UnrolledSurface? unrolled);
        double pitch = unrolled!.Length.Millimeters / 400;
        this.layout = new WindowLayout(unrolled, [.. Enumerable.Range(0, 400).Select(i => ContactWindow.Rectangle(
            Length.FromMillimeters((i + 0.5) * pitch), unrolled.Girth * (0.1 + (0.002 * i)), Length.FromMillimeters(Math.Min(50, pitch)), Length.FromMillimeters(50)))]);
        if (this.strips.Count is < Strips - 50 or > Strips + 50)
        {
            throw new InvalidOperationException($"{this.strips.Count} strips.");
        }
    }

    [Benchmark(Baseline = true)]
    public JoinedStrips Conducting() => new(this.strips, this.layout!, true, Area.FromSquareCentimeters(1));

    [Benchmark]
    public JoinedStrips OverFilm() => new(this.strips, this.layout!, false, Area.FromSquareCentimeters(1));

    private static StripStock Narrow(StripStock stock) => new(stock.Tape, Length.FromMillimeters(41), stock.RollLength);

    private static (Surface Surface, ValueList<PlacedStrip> Strips) Placed<T>(T lay)
        where T : ILay, IPlacedStrips => (lay.Surface, lay.PlaceStrips());

    private static (Surface Surface, ValueList<PlacedStrip> Strips) Chequer() => (
        new RectangularPanel(Length.FromMeters(50), Length.FromMeters(50)),
        [.. Enumerable.Range(0, Strips).Select(static i => new PlacedStrip(
            i + 1, Length.FromMillimeters(i / 100 * 490), Length.FromMillimeters(510), Length.FromMillimeters(i % 100 * 490), Length.FromMillimeters(510), false))]);
}
