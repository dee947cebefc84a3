namespace SacrificialTape.Surfaces;

/// <summary>What must not be taped over.</summary>
public enum StayClearKind
{
    /// <summary>A joint that keeps two lengths of pipe apart electrically.</summary>
    IsolatingJoint = 0,

    /// <summary>An earth bond: its lug, stud and cable.</summary>
    EarthBond,

    /// <summary>A weep, vent or drain hole.</summary>
    WeepHole,

    /// <summary>A place where somebody measures or looks.</summary>
    InspectionPoint,

    /// <summary>A name plate, stamp or tag.</summary>
    NamePlate,

    /// <summary>A flanged joint with its bolts and gasket.</summary>
    FlangedJoint,

    /// <summary>Something that moves: a hinge, a spindle, a sliding shoe.</summary>
    MovingPart,
}
