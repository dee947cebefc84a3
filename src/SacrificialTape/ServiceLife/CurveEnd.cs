namespace SacrificialTape.ServiceLife;

/// <summary>What a measured curve of loss says beyond its last point.</summary>
public enum CurveEnd
{
    /// <summary>Nothing: a time or loss beyond the last point is refused.</summary>
    Refuse = 0,

    /// <summary>It goes on straight with its slope at the last point; a life that gets there leaves a finding.</summary>
    EndTangent,

    /// <summary>It goes on straight with the mean slope between the last two points; a life that gets there leaves a finding.</summary>
    LastChord,
}
