namespace SacrificialTape.Documents;

/// <summary>The table of the library's own surfaces: every one has a form, held by a test.</summary>
internal static class LibrarySurfaceForms
{
    internal static SurfaceForm[] All() =>
    [
        StraightPipeForm.Form,
        InterruptedPipeForm.Form,
        BendForm.Form,
        MitredBendForm.Form,
        ConcentricReducerForm.Form,
        EccentricReducerForm.Form,
        TeeForm.Form,
        FlangeForm.Form,
        FlatHeadForm.Form,
        ConicalHeadForm.Form,
        EllipsoidalHeadForm.Form,
        HemisphericalHeadForm.Form,
        TorisphericalHeadForm.Form,
        CapForm.Form,
        RectangularPanelForm.Form,
        CircularPanelForm.Form,
        AnnularPanelForm.Form,
        CorrugatedPanelForm.Form,
        ShellForm.Form,
        TaperedColumnForm.Form,
        MeasuredAreaForm.Form,
        SheetEdgeForm.Form,
        WindowOpeningForm.Form,
        WasherForm.Form,
        PipeStrapForm.Form,
        AngleSectionForm.Form,
        ChannelForm.Form,
        CircularHollowSectionForm.Form,
        ISectionForm.Form,
        RectangularHollowSectionForm.Form,
        TeeSectionForm.Form,
    ];
}
