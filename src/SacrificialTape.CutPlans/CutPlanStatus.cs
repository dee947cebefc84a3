namespace SacrificialTape.CutPlans;

/// <summary>How far the search came.</summary>
public enum CutPlanStatus
{
    /// <summary>No plan takes fewer rolls: the plan meets a bound that is proved.</summary>
    Proved = 0,

    /// <summary>The best plan found before the time was up or the search at its end; a better one may exist.</summary>
    BestFound,
}
