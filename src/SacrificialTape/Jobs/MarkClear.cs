using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Jobs;

/// <summary>What the crew is told about places that stay clear of tape, and why; from common practice (no source).</summary>
internal static class MarkClear
{
    internal static string Text(ValueList<StayClear> clear) =>
        $"Mark and mask what stays clear, each with its margin: {string.Join("; ", clear)}. Lay nothing inside the marks and take the masks off at the end. {string.Join(' ', clear.Select(static one => one.Kind).Distinct().Order().Select(Why))}";

    private static string Why(StayClearKind kind) => kind switch
    {
        StayClearKind.IsolatingJoint => "Never bridge an isolating joint with zinc: it conducts, so that what the joint keeps apart is joined and protection current or stray current passes. Ask whoever looks after the cathodic protection before you work there.",
        StayClearKind.EarthBond => "Never bridge or cover an earth bond with zinc: it hides the lug, and a path through foil can pass a test while the bond itself is broken; foil does not carry a fault current. Only a licensed electrician loosens a bond.",
        StayClearKind.WeepHole => "A covered weep hole hides a leak and lets pressure build up under the tape.",
        StayClearKind.InspectionPoint => "At an inspection point the gauge must reach what it measures.",
        StayClearKind.NamePlate => "A name plate must stay legible.",
        StayClearKind.FlangedJoint => "At a flanged joint bolts and gasket must be reached and a leak be seen.",
        _ => "Let a moving part go through its whole travel under the site's permit and lock it before you work there; tape would jam it or be torn off.",
    };
}
