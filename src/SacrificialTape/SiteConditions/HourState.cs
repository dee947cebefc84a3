namespace SacrificialTape.SiteConditions;

/// <summary>What is to be said of an hour outside the windows of work.</summary>
public enum HourState
{
    /// <summary>Too little is known of it, or of the hours round it.</summary>
    NotKnown = 0,

    /// <summary>A rule is broken.</summary>
    Unfit,
}
