using System.Globalization;
using SacrificialTape.TakeOff;
using UnitsNet;

namespace SacrificialTape.CutPlans;

/// <summary>A plan of whole pieces with the fewest rolls that a solver found, and what is proved of it.</summary>
/// <remarks>
/// The search begins with the plan of the core library and ends as soon as a plan meets a proved bound. Every plan is
/// checked piece by piece and to the micrometre before it is handed out, and the bound is settled in whole numbers, so
/// that no rounding of a solver can pass for a proof. A search that ends before its time gives the same plan every time;
/// one that is cut short gives what it has.
/// </remarks>
public sealed record SolvedCutPlan
{
    private SolvedCutPlan(CutPlan plan, long leastRolls)
    {
        this.Plan = plan;
        this.LeastRolls = leastRolls;
    }

    /// <summary>The plan. Its own bound is that of the core library; the one here is at least as good.</summary>
    public CutPlan Plan { get; }

    /// <summary>Rolls the plan takes.</summary>
    public long Rolls => this.Plan.Rolls;

    /// <summary>A number of rolls that no plan can beat.</summary>
    public long LeastRolls { get; }

    /// <summary>Rolls above that number: the plan takes at most so many too many.</summary>
    public long Gap => this.Rolls - this.LeastRolls;

    /// <summary>Whether the plan is proved to take the fewest rolls.</summary>
    public CutPlanStatus Status => this.Gap == 0 ? CutPlanStatus.Proved : CutPlanStatus.BestFound;

    /// <summary>Looks for the plan with the fewest rolls.</summary>
    /// <param name="pieces">The whole pieces, in any order.</param>
    /// <param name="roll">Length of a roll.</param>
    /// <param name="shortestPiece">The shortest offcut worth keeping, more than 0.</param>
    /// <param name="timeLimit">
    /// When to stop looking, more than 0, at most a day. The plan of the core library, which comes first, is not timed.
    /// </param>
    /// <param name="cancellation">Ends the search early, within about a second; what was found by then is lost.</param>
    /// <exception cref="ArgumentException">A piece is longer than the roll.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length or the time is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The search was ended early.</exception>
    public static SolvedCutPlan Solve(
        IEnumerable<CutPiece> pieces, Length roll, Length shortestPiece, TimeSpan timeLimit, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        if (timeLimit <= TimeSpan.Zero || timeLimit > TimeSpan.FromDays(1))
        {
            throw new ArgumentOutOfRangeException(nameof(timeLimit), string.Create(
                CultureInfo.InvariantCulture, $"{timeLimit.TotalSeconds:0.######} s is outside the accepted range: more than 0 s and at most one day."));
        }

        CutPiece[] asked = [.. pieces];
        cancellation.ThrowIfCancellationRequested();
        CutPlan plain = CutPlan.Of(asked, roll, shortestPiece);
        if (plain.ProvedMinimal)
        {
            return new(plain, plain.LeastRolls);
        }

        var search = new PlanSearch(Demand.Of(asked, plain.RollLength), plain, new Deadline(timeLimit, cancellation));
        search.Run();
        cancellation.ThrowIfCancellationRequested();
        CutPlan best = search.Patterns is { } patterns ? CutPlan.FromPatterns(asked, roll, shortestPiece, patterns) : plain;
        return new(best, search.LeastRolls);
    }

    /// <summary>Rolls, status and bound in a few words.</summary>
    public override string ToString() => this.Status == CutPlanStatus.Proved
        ? $"{this.Rolls} roll(s), proved minimal"
        : $"{this.Rolls} roll(s), best found, at least {this.LeastRolls} needed";
}
