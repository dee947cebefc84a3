namespace SacrificialTape.ServiceLife;

/// <summary>What of a power law with tangent depends on its exponent alone, worked out once.</summary>
internal readonly struct PowerLawTerms
{
    /// <summary>The power law holds to 20 years; beyond, its tangent there.</summary>
    internal const double KneeYears = 20;

    internal PowerLawTerms(double exponent)
    {
        this.Exponent = exponent;
        this.Inverse = 1 / exponent;
        this.AtKnee = Math.Pow(KneeYears, exponent);
        this.SlopeAfter = exponent * Math.Pow(KneeYears, exponent - 1);
    }

    /// <summary>b.</summary>
    internal double Exponent { get; }

    /// <summary>1 / b.</summary>
    internal double Inverse { get; }

    /// <summary>20^b.</summary>
    internal double AtKnee { get; }

    /// <summary>b 20^(b - 1).</summary>
    internal double SlopeAfter { get; }
}
