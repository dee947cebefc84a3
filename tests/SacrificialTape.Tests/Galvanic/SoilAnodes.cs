using FsCheck.Xunit;

namespace SacrificialTape.Tests.Galvanic;

public sealed class SoilAnodes
{
    [Property]
    public void Output_falls_with_resistivity_and_grows_with_both_factors(byte size, byte potential, ushort soil)
    {
        double f = 0.2 + (size / 100.0);
        double y = 0.1 + (potential / 200.0);
        double ohmM = 5 + (soil / 100.0);
        double amperes = Of(f, y, ohmM).Output.Amperes;
        Near.Equal(amperes / 2, Of(f, y, 2 * ohmM).Output.Amperes, 1e-12);
        Near.Equal(2 * amperes, Of(2 * f, y, ohmM).Output.Amperes, 1e-12);
        Near.Equal(amperes / y, Of(f, 1, ohmM).Output.Amperes, 1e-12);
    }

    [Property]
    public void The_number_is_the_least_that_gives_the_demand(ushort milliamperes)
    {
        SoilAnode anode = Of(0.71, 1, 50);
        var demand = ElectricCurrent.FromMilliamperes(milliamperes);
        int number = anode.Number(demand);
        Assert.True(number * anode.Output.Milliamperes >= milliamperes * (1 - 1e-9));
        Assert.True((number - 1) * anode.Output.Milliamperes < milliamperes * (1 + 1e-9) || number == 0);
    }

    [Fact]
    public void Bad_input_is_refused_with_its_range()
    {
        Assert.Contains("500 ohm.cm", Assert.Throws<ArgumentOutOfRangeException>(static () => Of(1, 1, 4.9)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(static () => Of(0, 1, 10));
        Assert.Throws<ArgumentOutOfRangeException>(static () => Of(1, 2.1, 10));
        Assert.Throws<ArgumentOutOfRangeException>(static () => new SoilAnode((SoilAnodeKind)9, 1, 1, ElectricResistivity.FromOhmMeters(10)));
        Assert.Throws<ArgumentOutOfRangeException>(static () => Of(1, 0, 10).Number(ElectricCurrent.FromAmperes(1)));
        Assert.Throws<ArgumentOutOfRangeException>(static () => Of(1, 1, 10).Number(ElectricCurrent.FromAmperes(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(static () => SaltSolution.DiluteSodiumChloride(Molarity.FromMolesPerLiter(0.2)));
        Assert.Throws<ArgumentOutOfRangeException>(static () => MarineDemand.Of(Length.FromMeters(-1), ClimateZone.Arctic));
        Assert.Throws<ArgumentOutOfRangeException>(static () => MarineDemand.Of(Length.FromMeters(1), (ClimateZone)4));
    }

    [Fact]
    public void Depth_bands_hold_their_lower_end_and_colder_seas_ask_for_no_less()
    {
        foreach (double metres in new[] { 0.0, 30, 30.1, 100, 101, 300, 301, 5000 })
        {
            MarineDemand[] rows = [.. Enum.GetValues<ClimateZone>().Select(zone => MarineDemand.Of(Length.FromMeters(metres), zone))];
            Assert.Equal(rows.OrderBy(static row => row.Mean.AmperesPerSquareMeter), rows);
            Assert.All(rows, static row => Assert.True(row.Mean < row.Final && row.Final < row.Initial));
            Assert.All(rows, static row => Assert.Equal(BasisKind.Recalled, row.Basis.Kind));
        }

        Assert.Equal(MarineDemand.Of(Length.Zero, ClimateZone.Temperate), MarineDemand.Of(Length.FromMeters(30), ClimateZone.Temperate));
        Assert.NotEqual(MarineDemand.Of(Length.Zero, ClimateZone.Temperate), MarineDemand.Of(Length.FromMeters(31), ClimateZone.Temperate));
    }

    [Property]
    public void Conductivity_grows_with_strength(ushort share)
    {
        double strength = 0.0005 + (0.0990 * share / ushort.MaxValue);
        Assert.True(
            SaltSolution.DiluteSodiumChloride(Molarity.FromMolesPerLiter(strength * 1.001)).SiemensPerMeter
            > SaltSolution.DiluteSodiumChloride(Molarity.FromMolesPerLiter(strength)).SiemensPerMeter);
    }

    private static SoilAnode Of(double size, double potential, double ohmM) =>
        new(SoilAnodeKind.ZincCoated, size, potential, ElectricResistivity.FromOhmMeters(ohmM));
}
