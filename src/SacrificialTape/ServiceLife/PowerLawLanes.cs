using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>What of power laws with tangent depends on their exponents alone, in lanes: see <see cref="PowerLawTerms"/>.</summary>
internal readonly struct PowerLawLanes<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    private static readonly double LogKnee = Math.Log(PowerLawTerms.KneeYears);

    /// <summary>Each lane has a law of its own.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal PowerLawLanes(TLanes exponent)
    {
        this.Exponent = exponent;
        this.Inverse = 1 / exponent;
        this.AtKnee = TLanes.Exp(exponent * LogKnee);
        this.SlopeAfter = exponent * this.AtKnee / PowerLawTerms.KneeYears;
        this.Holds = (exponent > 0) & (exponent <= 1);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private PowerLawLanes(TLanes exponent, TLanes inverse, TLanes atKnee, TLanes slopeAfter)
    {
        this.Exponent = exponent;
        this.Inverse = inverse;
        this.AtKnee = atKnee;
        this.SlopeAfter = slopeAfter;
        this.Holds = (exponent > 0) & (exponent <= 1);
    }

    /// <summary>b.</summary>
    internal TLanes Exponent { get; }

    /// <summary>1 / b.</summary>
    internal TLanes Inverse { get; }

    /// <summary>20^b.</summary>
    internal TLanes AtKnee { get; }

    /// <summary>b 20^(b - 1).</summary>
    internal TLanes SlopeAfter { get; }

    /// <summary>A mask of the lanes whose exponent is more than 0 and at most 1.</summary>
    internal TLanes Holds { get; }

    /// <summary>The law of the first lane in all lanes of another width, bit for bit.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static PowerLawLanes<TLanes> Spread(in PowerLawLanes<TwoLanes> law) =>
        new(law.Exponent.First, law.Inverse.First, law.AtKnee.First, law.SlopeAfter.First);
}
