using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace HostTool;

/// <summary>Zinc in the spray of a salted road: so many times the rate of the place, until the salting ends.</summary>
/// <remarks>Times: at least 1. Years of salting: zero or more. Time and loss: zero or more. A rate of zero uses nothing up.</remarks>
#region law
public sealed record SaltedRoadLoss : ILossLaw
{
    private readonly double times;
    private readonly double years;

    public SaltedRoadLoss(double times, Duration salting, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentOutOfRangeException.ThrowIfLessThan(times, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(salting.Years365, nameof(salting));
        this.times = times;
        this.years = salting.Years365;
        this.Basis = basis;
    }

    public string Name => "salted road";

    public Basis Basis { get; }

    public Length Loss(CorrosionRate firstYear, Duration time)
    {
        double all = Years(time);
        double salted = Math.Min(all, this.years);
        return Length.FromMicrometers(firstYear.MicrometersPerYear * ((this.times * salted) + (all - salted)));
    }

    public Lifetime TimeToLoss(CorrosionRate firstYear, Length loss) => firstYear.MicrometersPerYear == 0 && loss > Length.Zero
        ? Lifetime.Unlimited
        : Lifetime.Of(Duration.FromYears365(this.YearsTo(firstYear.MicrometersPerYear, Micrometers(loss))));

    public CorrosionRate RateAt(CorrosionRate firstYear, Duration time) =>
        CorrosionRate.FromMicrometersPerYear(firstYear.MicrometersPerYear * (Years(time) < this.years ? this.times : 1));

    public Workings ShowTimeToLoss(CorrosionRate firstYear, Length loss)
    {
        double rate = firstYear.MicrometersPerYear;
        double um = Micrometers(loss);
        return new("Time to a loss, " + this.Name, rate == 0
            ? []
            : [ColumnFormulas.SaltedTime(this.Basis).Step(this.YearsTo(rate, um), um, this.times, rate, this.years)]);
    }

    // The inverse of Loss, in the same arithmetic that the workings show.
    private double YearsTo(double rate, double um) => um == 0
        ? 0
        : Math.Min(um / (this.times * rate), this.years) + Math.Max(0, (um / rate) - (this.times * this.years));

    private static double Years(Duration time)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(time.Years365, nameof(time));
        return time.Years365;
    }

    private static double Micrometers(Length loss)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(loss.Micrometers, nameof(loss));
        return loss.Micrometers;
    }
}
#endregion
