using System.Runtime.CompilerServices;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>
/// Closed forms of the potential under a thin film. Film in um, lengths in mm, V, S/m, ohm.m2, A/m2; currents over an
/// edge in mA/m. With d in um, sqrt(sigma d R) comes out in mm.
/// </summary>
internal static class ReachKernel
{
    internal static double DecayMm(double siemensPerM, double filmUm, double ohmM2) => Math.Sqrt(siemensPerM * filmUm * ohmM2);

    /// <summary>The same in lanes; not a number where the film is thicker than a film, or a value is not above 0.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes DecayMm<TLanes>(TLanes siemensPerM, TLanes filmUm, TLanes ohmM2)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(
            (siemensPerM > 0) & (siemensPerM <= double.MaxValue) & (filmUm > 0) & (filmUm <= ThinFilm.ThickestUm)
                & (ohmM2 > 0) & (ohmM2 <= double.MaxValue),
            TLanes.Sqrt(siemensPerM * filmUm * ohmM2),
            double.NaN);

    internal static double SteelDecay<TSteps>(double siemensPerM, double filmUm, double ohmM2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double decay = DecayMm(siemensPerM, filmUm, ohmM2);
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.SteelDecay, [siemensPerM, filmUm, ohmM2], decay);
        }

        return decay;
    }

    internal static double ZincDecay<TSteps>(double siemensPerM, double filmUm, double ohmM2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double decay = DecayMm(siemensPerM, filmUm, ohmM2);
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.ZincDecay, [siemensPerM, filmUm, ohmM2], decay);
        }

        return decay;
    }

    /// <summary>The couple of zinc and steel; every number that its result shows.</summary>
    internal static LinearCoupleTerms Couple<TSteps>(in LinearCoupleInput given, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double steelDecay = SteelDecay(given.SiemensPerM, given.FilmUm, given.SteelOhmM2, steps);
        double zincDecay = ZincDecay(given.SiemensPerM, given.FilmUm, given.ZincOhmM2, steps);
        double steel = given.SiemensPerM * given.FilmUm / (1000 * steelDecay) * Math.Tanh(given.SteelMm / steelDecay);
        double zinc = given.SiemensPerM * given.FilmUm / (1000 * zincDecay) * Math.Tanh(given.ZincMm / zincDecay);
        double edge = (1000 * given.InertGapMm / (given.SiemensPerM * given.FilmUm)) + given.ContactOhmM;
        double current = 1000 * (given.SteelV - given.ZincV) / ((1 / steel) + (1 / zinc) + edge);
        double steelEdge = given.SteelV - (current / (1000 * steel));
        double zincEdge = given.ZincV + (current / (1000 * zinc));
        double far = given.SteelV + ((steelEdge - given.SteelV) / Math.Cosh(given.SteelMm / steelDecay));
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.SteelConductance, [given.SiemensPerM, given.FilmUm, steelDecay, given.SteelMm], steel);
            steps.Add(ReachFormulas.ZincConductance, [given.SiemensPerM, given.FilmUm, zincDecay, given.ZincMm], zinc);
            steps.Add(ReachFormulas.EdgeResistance, [given.InertGapMm, given.SiemensPerM, given.FilmUm, given.ContactOhmM], edge);
            steps.Add(ReachFormulas.CoupleCurrent, [given.SteelV, given.ZincV, steel, zinc, edge], current);
            steps.Add(ReachFormulas.SteelEdge, [given.SteelV, current, steel], steelEdge);
            steps.Add(ReachFormulas.ZincEdge, [given.ZincV, current, zinc], zincEdge);
            steps.Add(ReachFormulas.FarEnd, [given.SteelV, steelEdge, given.SteelMm, steelDecay], far);
        }

        double peakOverMean = PeakOverMean(given.ZincMm, zincDecay, steps);
        double peak = current / given.ZincMm * peakOverMean;
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.PeakZinc, [current, given.ZincMm, peakOverMean], peak);
        }

        return new(steelDecay, zincDecay, current, steelEdge, zincEdge, far, peakOverMean, peak);
    }

    /// <summary>(a/lambda) coth(a/lambda): how much more the edge of the zinc gives than its mean.</summary>
    internal static double PeakOverMean<TSteps>(double zincMm, double decayMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double ratio = zincMm / decayMm / Math.Tanh(zincMm / decayMm);
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.PeakOverMean, [zincMm, decayMm], ratio);
        }

        return ratio;
    }

    /// <summary>cosh((c - x)/lambda)/cosh(c/lambda), the share of the edge's shift left at x; no overflow, and for an endless strip exp(-x/lambda).</summary>
    internal static double ShareAt(double distanceMm, double widthMm, double decayMm)
    {
        double near = Math.Exp(-distanceMm / decayMm);
        double mirrored = Math.Exp(-((2 * widthMm) - distanceMm) / decayMm);
        return (near + mirrored) / (1 + Math.Exp(-2 * widthMm / decayMm));
    }

    /// <summary>lambda ln(q), where q is the shift at the edge over the shift wanted.</summary>
    internal static double HalfSpaceReach<TSteps>(double decayMm, double edgeV, double restV, double wantedV, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double reach = decayMm * Math.Log((edgeV - restV) / (wantedV - restV));
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.HalfSpaceReach, [decayMm, edgeV, restV, wantedV], reach);
        }

        return reach;
    }

    /// <summary>The same in lanes; not a number where the potentials do not lie in the order edge, wanted, rest.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes HalfSpaceReach<TLanes>(TLanes decayMm, TLanes edgeV, TLanes restV, TLanes wantedV)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(
            Ordered(edgeV, restV, wantedV), decayMm * TLanes.Log((edgeV - restV) / (wantedV - restV)), double.NaN);

    /// <summary>lambda arcosh(q).</summary>
    internal static double HalfGapReach<TSteps>(double decayMm, double edgeV, double restV, double wantedV, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double reach = decayMm * Math.Acosh((edgeV - restV) / (wantedV - restV));
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.HalfGapReach, [decayMm, edgeV, restV, wantedV], reach);
        }

        return reach;
    }

    /// <summary>The same in lanes: arcosh(1 + d) = ln(1 + x), x = d + sqrt(d (2 + d)).</summary>
    internal static TLanes HalfGapReach<TLanes>(TLanes decayMm, TLanes edgeV, TLanes restV, TLanes wantedV)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes above = ((edgeV - restV) / (wantedV - restV)) - 1;
        TLanes more = above + TLanes.Sqrt(above * (2 + above));

        // What rounding takes from 1 + x is given back in proportion, so that a small x keeps its digits.
        TLanes sum = 1 + more;
        TLanes logarithm = TLanes.Where(TLanes.Same(sum, 1), more, TLanes.Log(sum) * (more / (sum - 1)));
        return TLanes.Where(Ordered(edgeV, restV, wantedV), decayMm * logarithm, double.NaN);
    }

    /// <summary>sqrt(2 sigma d U / i_L), mm.</summary>
    internal static double OxygenReach<TSteps>(double siemensPerM, double filmUm, double drop, double limit, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double reach = Math.Sqrt(2 * siemensPerM * filmUm * drop / limit);
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.OxygenReach, [siemensPerM, filmUm, drop, limit], reach);
        }

        return reach;
    }

    /// <summary>1 / (ln 10 i_corr (1/b_a + (1 - i_corr/i_L)/b_c)).</summary>
    internal static double RestResistance(double corrosion, double anodic, double cathodic, double limit)
    {
        const double Ln10 = 2.302585092994045684;
        double free = double.IsPositiveInfinity(limit) ? 1 : 1 - (corrosion / limit);
        return 1 / (Ln10 * corrosion * ((1 / anodic) + (free / cathodic)));
    }

    internal static double MeanCurrent<TSteps>(double current, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double mean = current / widthMm;
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.MeanCurrent, [current, widthMm], mean);
        }

        return mean;
    }

    internal static double FullGap<TSteps>(double halfMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double gap = 2 * halfMm;
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.FullGap, [halfMm], gap);
        }

        return gap;
    }

    internal static double Elasticity<TSteps>(Formula formula, double less, double more, double gapLess, double gapMore, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double elasticity = Math.Log(gapMore / gapLess) / Math.Log(more / less);
        if (TSteps.Records)
        {
            steps.Add(formula, [gapMore, gapLess, more, less], elasticity);
        }

        return elasticity;
    }

    /// <summary>Bare steel for each area of zinc, evenly, beside a margin: b / w.</summary>
    internal static double MarginFeed<TSteps>(double bareMm, double zincMm, double peakOverMean, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double ratio = bareMm / zincMm * peakOverMean;
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.MarginFeed, [bareMm, zincMm, peakOverMean], ratio);
        }

        return ratio;
    }

    /// <summary>Round holiday fed by an even ring: r^2 / ((r + w)^2 - r^2).</summary>
    internal static double RingFeed<TSteps>(double radiusMm, double ringMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double ratio = radiusMm * radiusMm / (ringMm * ((2 * radiusMm) + ringMm));
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.RingFeed, [radiusMm, ringMm], ratio);
        }

        return ratio;
    }

    /// <summary>Round holiday in wide zinc: r / (2 lambda k), k = K1(r/lambda)/K0(r/lambda).</summary>
    internal static double RoundFeed<TSteps>(double radiusMm, double decayMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double k = BesselRatio(radiusMm / decayMm);
        double ratio = radiusMm / (2 * decayMm * k);
        if (TSteps.Records)
        {
            steps.Add(ReachFormulas.RoundFeed, [radiusMm, decayMm, k], ratio);
        }

        return ratio;
    }

    /// <summary>
    /// K1(x)/K0(x) from their integrals, the means of cosh u and of 1 under exp(-x cosh u) for u from 0 on. The trapezoidal
    /// rule is exact to rounding there: the integrand dies doubly exponentially.
    /// </summary>
    internal static double BesselRatio(double x)
    {
        double step = Math.Min(0.05, 0.5 / Math.Sqrt(x));
        double zero = 0.5;
        double one = 0.5;
        for (int i = 1; ; i++)
        {
            double cosh = Math.Cosh(step * i);
            double weight = Math.Exp(-x * (cosh - 1));
            zero += weight;
            one += weight * cosh;
            if (weight * cosh <= 1e-17 * one)
            {
                return one / zero;
            }
        }
    }

    // Potentials lie within 4 V of the reference, whatever it is.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Ordered<TLanes>(TLanes edgeV, TLanes restV, TLanes wantedV)
        where TLanes : struct, ILanes<TLanes> => (edgeV > -4) & (edgeV < wantedV) & (wantedV < restV) & (restV <= 4);
}
