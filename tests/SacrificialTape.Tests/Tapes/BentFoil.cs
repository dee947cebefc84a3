using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Tapes;

/// <summary>How much the outside of a bent foil stretches.</summary>
public sealed class BentFoil
{
    [Theory]
    [InlineData(0.1, 84.15)]
    [InlineData(0.5, 5)]
    [InlineData(0.3, 0.3)]
    [InlineData(0.2, 0)]
    public void The_strain_is_that_of_the_outer_arc_over_the_middle_one(double thickness, double radius)
    {
        // Two arcs stepped along in short chords, without the formula.
        double Arc(double r)
        {
            double length = 0;
            const int Steps = 20_000;
            for (int i = 0; i < Steps; i++)
            {
                double one = Math.PI / 2 * i / Steps;
                double two = Math.PI / 2 * (i + 1) / Steps;
                length += Math.Sqrt(Math.Pow(r * (Math.Cos(two) - Math.Cos(one)), 2) + Math.Pow(r * (Math.Sin(two) - Math.Sin(one)), 2));
            }

            return length;
        }

        var bent = new FoilBending(new Foil(Mm(thickness)), Mm(radius));
        Near.Equal((Arc(radius + thickness) / Arc(radius + (thickness / 2))) - 1, bent.Strain.Fraction, 1e-7, absolute: 1e-9);
        Near.Equal(radius, FoilBending.SmallestRadius(bent.Foil, bent.Strain).Millimeters, 1e-9, absolute: 1e-9);
    }

    [Fact]
    public void The_rules_stand_at_the_strains_they_name()
    {
        double wrap = RuleSet.Default[RuleIds.MinimumWrapDiameter].Limit!.Value.Number;
        double fold = RuleSet.Default[RuleIds.MinimumFoldRadius].Limit!.Value.Number;
        Assert.Equal("0.9901 %", new FoilBending(new Foil(Mm(0.1)), Mm(0.1 * wrap / 2)).Strain.ToString());
        Assert.Equal("9.091 %", new FoilBending(new Foil(Mm(0.1)), Mm(0.1 * fold)).Strain.ToString());
    }

    [Fact]
    public void Bad_numbers_are_refused()
    {
        Errors.Refused(static () => new FoilBending(new Foil(Mm(0.1)), Mm(-1)), "radius", "-1 mm", "at least 0");
        Errors.Refused(static () => FoilBending.SmallestRadius(new Foil(Mm(0.1)), EdgeStrain.FromFraction(0)), "allowed", "more than 0");
    }
}
