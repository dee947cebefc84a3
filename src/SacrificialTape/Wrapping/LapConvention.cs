namespace SacrificialTape.Wrapping;

/// <summary>Where a crew measures the lap of a spiral. On small pipe the difference matters.</summary>
public enum LapConvention
{
    /// <summary>Across the strip: the true lap, what a rule laid square over the edge shows.</summary>
    TrueLap = 0,

    /// <summary>Along the pipe's axis, from edge to edge: the true lap is smaller.</summary>
    LapAlongPipe,

    /// <summary>By two marks on the pipe, strip width less lap apart: the true lap is larger.</summary>
    LapBetweenMarks,

    /// <summary>By the advance itself: the distance between the marks.</summary>
    Advance,
}
