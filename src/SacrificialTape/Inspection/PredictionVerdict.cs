namespace SacrificialTape.Inspection;

/// <summary>How readings stand to what was predicted.</summary>
public enum PredictionVerdict
{
    /// <summary>The two ranges of the rate meet: the readings do not contradict the prediction.</summary>
    NotContradicted = 0,

    /// <summary>The whole measured range lies below the predicted one.</summary>
    Slower,

    /// <summary>The whole measured range lies above the predicted one.</summary>
    Faster,
}
