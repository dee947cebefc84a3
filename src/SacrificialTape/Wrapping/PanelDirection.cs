namespace SacrificialTape.Wrapping;

/// <summary>How strips run on a panel.</summary>
public enum PanelDirection
{
    /// <summary>Along the width: level strips on an upright panel.</summary>
    AlongWidth = 0,

    /// <summary>Along the height: standing strips on an upright panel.</summary>
    AlongHeight,
}
