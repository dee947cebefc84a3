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
    private const int MostSteps = 100;
    private const double NoiseBelow = 1e-9;

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
        // Time grows with zinc over rate, so the ends of the zinc under each law bound the time.
        double logRate = this.logMedian + (this.sigma * NormalKernel.Quantile(confidence));
        double least = Math.Exp(this.zinc.Points.Min() - logRate);
        double most = Math.Exp(this.zinc.Points.Max() - logRate);
        double shortest = double.PositiveInfinity;
        double longest = 0;
        foreach (PowerLawTerms law in this.terms)
        {
            shortest = Math.Min(shortest, this.LayerYears(least, whole, part, law));
            longest = Math.Max(longest, this.LayerYears(most, whole, part, law));
        }

        if (this.IsOnePoint || longest <= shortest * (1 + RootWidth))
        {
            return shortest;
        }

        // A hair wider, for the ends themselves are rounded.
        double low = Math.Log(shortest) - 1e-9;
        double high = Math.Log(longest) + 1e-9;
        return Math.Exp(this.growth.HasSlope && (whole == 0 || part == 1)
            ? this.LogYears(confidence, whole, part, low, high)
            : BracketedRoot.Find(log => this.Reached(Math.Exp(log), whole, part) - confidence, low, high, RootWidth));
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

    private double LayerYears(double ratio, int whole, double part, in PowerLawTerms law) =>
        (whole == 0 ? 0 : whole * this.growth.Years(ratio, law)) + this.growth.Years(part * ratio, law);

    // Newton's steps on the quantile of the chance, which is nearly straight in ln of the time; where one leaves the bracket
    // it is halved instead.
    private double LogYears(double confidence, int whole, double part, double low, double high)
    {
        double wanted = NormalKernel.Quantile(confidence);
        double log = (low + high) / 2;
        double before = double.PositiveInfinity;
        for (int i = 0; i < MostSteps; i++)
        {
            (double chance, double slope) = this.ReachedWithSlope(Math.Exp(log), whole, part);
            (low, high) = chance > confidence ? (log, high) : (low, log);
            double next = (low + high) / 2;
            if (chance is > 0 and < 1 && slope < 0)
            {
                double z = NormalKernel.Quantile(chance);
                double newton = log + ((wanted - z) * NormalKernel.Density(z) / slope);
                double step = Math.Abs(newton - log);

                // The end: nothing moves any more, or what moves is the rounding of the chance itself.
                if (step <= RootWidth || (step < NoiseBelow && step >= before))
                {
                    return newton;
                }

                (before, next) = newton > low && newton < high ? (step, newton) : (double.PositiveInfinity, next);
            }

            log = next;
        }

        return log;
    }

    // The chance, and how it changes with ln of the time. Where all that goes is whole layers, or part of the first alone.
    private (double Chance, double Slope) ReachedWithSlope(double years, int whole, double part)
    {
        double sum = 0;
        double slope = 0;
        double oneLayer = whole == 0 ? years : years / (whole + 1);
        double shift = (whole == 0 ? -Math.Log(part) : 0) + this.logMedian;
        double[] points = this.zinc.Points;
        double[] shares = this.zinc.Weights;
        for (int b = 0; b < this.terms.Length; b++)
        {
            double needed = this.growth.LogLoss(oneLayer, this.terms[b]) + shift;
            double ofZinc = 0;
            double bells = 0;
            for (int i = 0; i < points.Length; i++)
            {
                (double below, double bell) = NormalKernel.BelowAndDensity((points[i] - needed) / this.sigma);
                ofZinc += shares[i] * below;
                bells += shares[i] * bell;
            }

            sum += this.weights[b] * ofZinc;
            slope -= this.weights[b] * bells * this.growth.LogSlope(oneLayer, this.terms[b]) / this.sigma;
        }

        return (Math.Min(1, sum), slope);
    }

    // ln of the zinc over the rate that lasts exactly so long.
    private double LogRatio(double years, int whole, double part, in PowerLawTerms law)
    {
        if (whole == 0)
        {
            return this.growth.LogLoss(years, law) - Math.Log(part);
        }

        double least = this.growth.LogLoss(years / (whole + 1), law);
        return part == 1 ? least : this.LogRatioOfParts(years, whole, part, law, least);
    }

    // On its own, so that only this case pays for what the search captures.
    private double LogRatioOfParts(double years, int whole, double part, PowerLawTerms law, double least)
    {
        double most = this.growth.LogLoss(years / whole, law);
        return BracketedRoot.Find(
            log => (whole * this.growth.Years(Math.Exp(log), law)) + this.growth.Years(part * Math.Exp(log), law) - years,
            least - 1e-9,
            most + 1e-9,
            RootWidth);
    }
}
