using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Tapes;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 300)]
public sealed class MassAndRolls
{
    [Property]
    public void Mass_is_volume_times_density(SpanCase given)
    {
        StripStock stock = Stock(given.WidthMm, 30, 0.1);
        double cubicMetres = given.SpanMm / 1000 * (given.WidthMm / 1000) * 0.0001;
        Near.Equal(cubicMetres * 7140, stock.ZincMass(Mm(given.SpanMm)).Kilograms, 1e-12);
    }

    [Property]
    public void The_layer_found_from_a_roll_gives_back_its_length(SpanCase given)
    {
        Length layer = WoundRoll.LayerThicknessFrom(Mm(76.2 + given.WidthMm), Mm(76.2), Mm(given.SpanMm + 1000));

        // Seen from the end, the roll is a ring as large as the unwound strip seen from the edge.
        double ring = Math.PI / 4 * (((76.2 + given.WidthMm) * (76.2 + given.WidthMm)) - (76.2 * 76.2));
        Near.Equal(ring, layer.Millimeters * (given.SpanMm + 1000), 1e-12);
        if (layer.Millimeters <= 5)
        {
            Near.Equal(given.SpanMm + 1000, new WoundRoll(Mm(76.2 + given.WidthMm), Mm(76.2), layer).StripLength.Millimeters, 1e-12);
        }
    }

    [Property]
    public void A_roll_is_as_long_as_its_rings_together(byte turns)
    {
        // Wound turn by turn, each at its own mean radius.
        double length = 0;
        for (int i = 0; i < turns + 1; i++)
        {
            length += Math.PI * (76 + (2 * i + 1) * 0.2);
        }

        Near.Equal(length, new WoundRoll(Mm(76 + (2 * 0.2 * (turns + 1))), Mm(76), Mm(0.2)).StripLength.Millimeters, 1e-11);
    }
}
