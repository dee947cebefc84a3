namespace SacrificialTape.CutPlans;

/// <summary>How far the search came.</summary>
public enum CutPlanStatus
{
    /// <summary>The best plan found before the time was up or the search at its end; a better one may exist.</summary>
    BestFound = 0,

    /// <summary>No plan takes fewer rolls: the plan meets a bound that is proved.</summary>
    Proved,
}
