using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>
/// The distribution of a life by quadrature. The rate is integrated in closed form: at each point of foil, usable share
/// and exponent the chance of a life is a value of the normal distribution function. Each is monotone in time and layers
/// and has a positive weight, so the sum keeps both whatever the quadrature does.
/// </summary>
internal sealed class LifeSpread
{
    private const double RootWidth = 1e-13;

    // |ln g| moves by at most ln 20 + 1/b, some 4.2 to 5, for each unit of the exponent from days to centuries.
    private const double LogPerExponent = 5;

    private readonly LossGrowth growth;
    private readonly double logMedian;
    private readonly double sigma;
    private readonly SpreadPoints zinc;
    private readonly PowerLawTerms[] terms;
    private readonly double[] weights;

    internal LifeSpread(double foilUm, double toleranceUm, LifeUncertainty given)
        : this(given, foilUm, Thickness(foilUm, toleranceUm, given.Tolerance), given.Usable.Likeliest.Fraction, given.Usable.Pieces)
    {
    }

    private LifeSpread(LifeUncertainty given, double foilUm, DensityPiece[] foil, double usable, DensityPiece[] usablePieces)
    {
        this.growth = given.Growth;
        this.logMedian = Math.Log(given.Rate.Median);
        this.sigma = given.Rate.Sigma;
        this.zinc = SpreadPoints.Sum(
            SpreadPoints.OfLogarithm(foilUm, foil, this.sigma), SpreadPoints.OfLogarithm(usable, usablePieces, this.sigma), this.sigma);
        if (given.Growth.Exponent is { } exponent)
        {
            SpreadPoints points = SpreadPoints.OfNormal(
                exponent.Mean.Value, exponent.StandardError, LogPerExponent * exponent.StandardError / this.sigma);
            this.terms = Array.ConvertAll(points.Points, static value => new PowerLawTerms(value));
            this.weights = points.Weights;
        }
        else
        {
            this.terms = [default];
            this.weights = [1];
        }
    }

    /// <summary>One exponent, one thickness, one usable share: nothing to integrate.</summary>
    internal bool IsOnePoint => this.terms.Length == 1 && this.zinc.Points.Length == 1;

    /// <summary>A coating of exactly that thickness, all of it usable, under the same rate and growth.</summary>
    internal static LifeSpread OfCoating(double um, LifeUncertainty given) => new(given, um, [], 1, []);

    /// <summary>Chance that k whole layers and a part of the next last at least so long.</summary>
    internal double Reached(double years, int whole, double part)
    {
        double sum = 0;
        for (int b = 0; b < this.terms.Length; b++)
        {
            double needed = this.LogRatio(years, whole, part, this.terms[b]) + this.logMedian;
            double ofZinc = 0;
            for (int i = 0; i < this.zinc.Points.Length; i++)
            {
                ofZinc += this.zinc.Weights[i] * NormalKernel.Below((this.zinc.Points[i] - needed) / this.sigma);
            }

            sum += this.weights[b] * ofZinc;
        }

        return Math.Min(1, sum); // weights that sum to one may do so a bit above
    }

    /// <summary>The time that k whole layers and a part of the next last with a confidence.</summary>
    internal double Years(double confidence, int whole, double part)
    {
        double logRate = this.logMedian + (this.sigma * NormalKernel.Quantile(confidence));
        double shortest = double.PositiveInfinity;
        double longest = 0;
        foreach (PowerLawTerms law in this.terms)
        {
            foreach (double log in this.zinc.Points)
            {
                double ratio = Math.Exp(log - logRate);
                double years = (whole == 0 ? 0 : whole * this.growth.Years(ratio, law)) + this.growth.Years(part * ratio, law);
                shortest = Math.Min(shortest, years);
                longest = Math.Max(longest, years);
            }
        }

        // A hair wider, for the ends themselves are rounded.
        return this.IsOnePoint || longest <= shortest * (1 + RootWidth)
            ? shortest
            : Math.Exp(BracketedRoot.Find(
                log => this.Reached(Math.Exp(log), whole, part) - confidence, Math.Log(shortest) - 1e-9, Math.Log(longest) + 1e-9, RootWidth));
    }

    /// <summary>Zinc in um, without spread, that lasts so long with a confidence under this rate and growth.</summary>
    internal double ZincUm(double years, double confidence)
    {
        double z = NormalKernel.Quantile(confidence);
        double[] needed = Array.ConvertAll(this.terms, law => this.growth.LogLoss(years, law) + this.logMedian);
        double low = needed.Min() + (this.sigma * z);
        double high = needed.Max() + (this.sigma * z);
        if (needed.Length == 1)
        {
            return Math.Exp(low);
        }

        double Surplus(double log)
        {
            double sum = -confidence;
            for (int b = 0; b < needed.Length; b++)
            {
                sum += this.weights[b] * NormalKernel.Below((log - needed[b]) / this.sigma);
            }

            return sum;
        }

        return Math.Exp(BracketedRoot.Find(Surplus, low - 1e-9, high + 1e-9, RootWidth));
    }

    private static DensityPiece[] Thickness(double um, double tolerance, ToleranceShape shape) => shape == ToleranceShape.Uniform
        ? DensityPiece.Uniform(um - tolerance, um + tolerance)
        : DensityPiece.Triangular(um - tolerance, um, um + tolerance);

    // ln of the zinc over the rate that lasts exactly so long.
    private double LogRatio(double years, int whole, double part, PowerLawTerms law)
    {
        if (whole == 0)
        {
            return this.growth.LogLoss(years, law) - Math.Log(part);
        }

        double least = this.growth.LogLoss(years / (whole + 1), law);
        if (part == 1)
        {
            return least;
        }

        double most = this.growth.LogLoss(years / whole, law);
        return BracketedRoot.Find(
            log => (whole * this.growth.Years(Math.Exp(log), law)) + this.growth.Years(part * Math.Exp(log), law) - years,
            least - 1e-9,
            most + 1e-9,
            RootWidth);
    }
}
