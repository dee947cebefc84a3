namespace SacrificialTape.Wrapping;

/// <summary>How the strips of a lay run.</summary>
public enum StripCourse
{
    /// <summary>Round the surface in one run, without a lap of a strip on its own end.</summary>
    Round = 0,

    /// <summary>Round the surface, lapping on their own ends.</summary>
    RoundWithEndLap,

    /// <summary>Along the surface.</summary>
    Along,

    /// <summary>Side by side on a face; the instruction of the lay says in which order.</summary>
    OnFace,
}
