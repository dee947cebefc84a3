using SacrificialTape.Contact;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/contact-layout.md quotes.</summary>
public static class ContactLayoutPage
{
    public static void OneEnd()
    {
        #region one-end
        // Ten windows of 80 cm2, all in the first metre of a pipe of 1 m girth and 4 m length.
        var pipe = new StraightPipe(Length.FromMillimeters(1000 / Math.PI), Length.FromMeters(4));
        var layout = new WindowLayout(new UnrolledSurface(pipe), [.. Enumerable.Range(1, 10).Select(i => ContactWindow.Rectangle(
            Length.FromMillimeters(100 * i), Length.FromMillimeters(500), Length.FromMillimeters(80), Length.FromMillimeters(100)))]);
        Console.WriteLine($"average: {layout.BareArea.SquareCentimeters / pipe.Area.SquareMeters:0.#} cm2/m2");
        Console.WriteLine($"worst square metre: {new LeastBareMetre(layout)}");
        Console.WriteLine($"farthest point: {new FarthestPoint(layout)}");
        #endregion
    }

    public static void Film()
    {
        #region film
        var pipe = new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(1));
        var tape = new Tape(
            new Foil(Length.FromMillimeters(0.1)), new Adhesive(Length.FromMillimeters(0.025)), new FacingFilm(Length.FromMillimeters(0.04)));
        var lay = new RingLay(pipe, new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(30)), Length.FromMillimeters(20));
        var layout = new WindowLayout(new UnrolledSurface(pipe),
        [
            ContactWindow.Rectangle(Length.FromMillimeters(250), Length.Zero, Length.FromMillimeters(60), Length.FromMillimeters(100)),
            ContactWindow.Disc(Length.FromMillimeters(750), Length.FromMillimeters(260), Length.FromMillimeters(80)),
        ]);
        Area least = Area.FromSquareCentimeters(1);
        Console.WriteLine(new JoinedStrips(lay.PlaceStrips(), layout, lapsConduct: true, least));
        Console.WriteLine(new JoinedStrips(lay.PlaceStrips(), layout, tape.ConductsAtLaps, least));
        foreach (Finding finding in new LayContact(lay, layout).Judge(RuleSet.Default, "line 7").Where(one => one.Severity == Severity.Stop))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }

    public static void Plan()
    {
        #region plan
        var pipe = new StraightPipe(Length.FromMillimeters(219.1), Length.FromMeters(3));
        var stock = new StripStock(
            new Tape(new Foil(Length.FromMillimeters(0.1)), new Adhesive(Length.FromMillimeters(0.025))), Length.FromMillimeters(100), Length.FromMeters(30));
        var lay = new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Length.FromMillimeters(20)));
        WindowLayout layout = WindowPlan.For(lay, RuleSet.Default);
        Console.WriteLine(new MarkingList(layout));
        var contact = new LayContact(lay, layout);
        Console.WriteLine(contact.FindWorstMetre());
        Console.WriteLine(contact.FindFarthest());
        foreach (Finding finding in contact.Judge(RuleSet.Default, "line 7"))
        {
            Console.WriteLine($"{finding.Severity} {finding.Rule.Id}");
        }
        #endregion
    }
}
