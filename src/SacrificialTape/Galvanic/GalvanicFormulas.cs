using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>The formulas of charge, demand and driving voltage as the workings show them.</summary>
internal static class GalvanicFormulas
{
    private static readonly Basis Faraday = Basis.From(References.FaradayConstants, "Faraday's law, ions of charge 2");
    private static readonly Basis Breakdown = Basis.From(References.OffshoreStructures);

    private static readonly Symbol F = new("F", "Faraday constant", TradeUnit.CoulombPerMole);
    private static readonly Symbol Molar = new("M", "molar mass", TradeUnit.GramPerMole);
    private static readonly Symbol Density = new("rho", "density", TradeUnit.KilogramPerCubicMeter);
    private static readonly Symbol Current = new("i", "current density", TradeUnit.AmperePerSquareMeter);
    private static readonly Symbol Initial = new("a", "bare share at the start", TradeUnit.One);
    private static readonly Symbol Yearly = new("b", "bare share more each year", TradeUnit.One);
    private static readonly Symbol Years = new("t", "life", TradeUnit.Year);
    private static readonly Symbol Drive = new("U", "driving voltage", TradeUnit.Volt);

    internal static Formula Capacity { get; } = new(
        "galvanic.capacity",
        new Symbol("Q", "Theoretical capacity", TradeUnit.AmpereHourPerKilogram),
        "n * F / (3.6 * M)",
        @"\frac{n\,F}{3.6\,M}",
        Faraday,
        [new Symbol("n", "charge of the ion", TradeUnit.One), F, Molar]);

    internal static Formula Consumption { get; } = new(
        "galvanic.consumption",
        new Symbol("S", "Zinc that goes for an ampere over a year", TradeUnit.KilogramPerAmpereYear),
        "8760 / Q",
        @"\frac{8760}{Q}",
        Basis.FirstPrinciples("a year of 8760 h"),
        [new Symbol("Q", "capacity", TradeUnit.AmpereHourPerKilogram)]);

    internal static Formula Recession { get; } = new(
        "galvanic.recession",
        new Symbol("r", "Rate of recession", TradeUnit.MicrometerPerYear),
        "i * M * 31536000000 / (2 * F * rho)",
        @"\frac{3.1536\cdot 10^{10}\,i\,M}{2\,F\,\rho}",
        Faraday,
        [Current, Molar, F, Density]);

    internal static Formula MassLoss { get; } = new(
        "galvanic.mass-loss",
        new Symbol("m", "Loss of mass", TradeUnit.GramPerSquareMeterYear),
        "i * M * 31536000 / (2 * F)",
        @"\frac{3.1536\cdot 10^{7}\,i\,M}{2\,F}",
        Faraday,
        [Current, Molar, F]);

    internal static Formula CurrentOfRecession { get; } = new(
        "galvanic.current-of-recession",
        new Symbol("i", "Current density", TradeUnit.AmperePerSquareMeter),
        "r * 2 * F * rho / (M * 31536000000)",
        @"\frac{2\,F\,\rho\,r}{3.1536\cdot 10^{10}\,M}",
        Faraday,
        [new Symbol("r", "rate of recession", TradeUnit.MicrometerPerYear), F, Density, Molar]);

    internal static Formula OtherReference { get; } = new(
        "galvanic.other-reference",
        new Symbol("E_other", "Potential against the other electrode", TradeUnit.Volt),
        "E_given + s",
        @"E + s",
        Basis.From(References.PipelineHandbook, "from -0.85 V CSE = -0.78 V SSC = -0.776 V SCE"),
        [new Symbol("E_given", "potential", TradeUnit.Volt), new Symbol("s", "difference of the electrodes", TradeUnit.Volt)]);

    internal static Formula DrivingVoltage { get; } = new(
        "galvanic.driving-voltage",
        new Symbol("U", "Driving voltage", TradeUnit.Volt),
        "E_steel - E_zinc",
        @"E_\text{steel} - E_\text{zinc}",
        Basis.FirstPrinciples("difference of the two potentials"),
        [new Symbol("E_steel", "potential of the protected steel", TradeUnit.Volt), new Symbol("E_zinc", "potential of the zinc", TradeUnit.Volt)]);

    internal static Formula DrivingFactor { get; } = new(
        "galvanic.driving-factor",
        new Symbol("y", "Driving-voltage factor", TradeUnit.One),
        "max(0, U / U_usual)",
        @"\max\left(0, \frac{U}{U_\text{usual}}\right)",
        Basis.From(References.DrivingVoltageFactors, "the table is 0 where zinc no longer drives, and so is this"),
        [Drive, new Symbol("U_usual", "driving voltage of factor 1", TradeUnit.Volt)]);

    internal static Formula OxygenLimit { get; } = new(
        "galvanic.oxygen-limit",
        new Symbol("i_L", "Most current that oxygen through the film can carry", TradeUnit.AmperePerSquareMeter),
        "4 * F * D * c / (d / 1000000)",
        @"\frac{4\,F\,D\,c}{d}",
        Basis.From(References.OxygenInWater, "diffusion through a still film"),
        [
            F,
            new Symbol("D", "diffusivity of oxygen", TradeUnit.SquareMeterPerSecond),
            new Symbol("c", "oxygen dissolved under air", TradeUnit.MolePerCubicMeter),
            new Symbol("d", "film", TradeUnit.Micrometer),
        ]);

    internal static Formula FinalBreakdown { get; } = new(
        "galvanic.breakdown-final",
        new Symbol("f_end", "Bare share at the end", TradeUnit.One),
        "min(1, a + b * t)",
        @"\min(1, a + b\,t)",
        Breakdown,
        [Initial, Yearly, Years]);

    internal static Formula MeanBreakdown { get; } = new(
        "galvanic.breakdown-mean",
        new Symbol("f_mean", "Bare share on the mean", TradeUnit.One),
        "a + b * t / 2",
        @"a + \tfrac{1}{2}\,b\,t",
        Breakdown,
        [Initial, Yearly, Years]);

    internal static Formula MeanBreakdownCapped { get; } = new(
        "galvanic.breakdown-mean-capped",
        new Symbol("f_mean", "Bare share on the mean, once all is bare", TradeUnit.One),
        "1 - (1 - a) * (1 - a) / (2 * b * t)",
        @"1 - \frac{(1 - a)^2}{2\,b\,t}",
        Breakdown,
        [Initial, Yearly, Years]);

    internal static Formula FlushResistance { get; } = new(
        "galvanic.flush-resistance",
        new Symbol("R", "Resistance of the anode to remote water or soil", TradeUnit.Ohm),
        "0.315 * rho_w / sqrt(A)",
        @"\frac{0.315\,\rho_w}{\sqrt{A}}",
        Basis.From(References.FlushAnodeResistance),
        [new Symbol("rho_w", "resistivity of water or soil", TradeUnit.OhmMeter), new Symbol("A", "exposed area of the anode", TradeUnit.SquareMeter)]);

    internal static Formula FlushCurrent { get; } = new(
        "galvanic.flush-current",
        new Symbol("I", "Current of the anode", TradeUnit.Ampere),
        "U / R",
        @"\frac{U}{R}",
        Basis.FirstPrinciples("Ohm's law"),
        [Drive, new Symbol("R", "resistance", TradeUnit.Ohm)]);

    internal static Formula SoilAnodeOutput { get; } = new(
        "galvanic.soil-anode",
        new Symbol("I", "Current of the anode", TradeUnit.Ampere),
        "C * f * y / (100000 * P)",
        @"\frac{C\,f\,y}{10^{5}\,P}",
        Basis.From(References.SoilAnodeOutput, "there in mA and ohm.cm; 10^5 turns both into A and ohm.m"),
        [
            new Symbol("C", "constant, mA.ohm.cm", TradeUnit.One),
            new Symbol("f", "size factor", TradeUnit.One),
            new Symbol("y", "potential factor", TradeUnit.One),
            new Symbol("P", "resistivity of the soil", TradeUnit.OhmMeter),
        ]);

    internal static Formula AnodeNumber { get; } = new(
        "galvanic.anode-number",
        new Symbol("n", "Number of anodes", TradeUnit.One),
        "ceil(I_all / I)",
        @"\left\lceil \frac{I_\text{all}}{I} \right\rceil",
        Basis.FirstPrinciples("fewer give less than the demand"),
        [new Symbol("I_all", "current demand", TradeUnit.Ampere), new Symbol("I", "current of one anode", TradeUnit.Ampere)]);
}
