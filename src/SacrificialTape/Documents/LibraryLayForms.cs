namespace SacrificialTape.Documents;

/// <summary>The table of the library's own lays: every one has a form, held by a test.</summary>
internal static class LibraryLayForms
{
    internal static LayForm[] All() =>
    [
        SpiralLayForm.Form,
        SpiralPairLayForm.Form,
        RingLayForm.Form,
        AlongPipeLayForm.Form,
        InterruptedLayForm.Form,
        BendRingLayForm.Form,
        BendSpiralLayForm.Form,
        MitredBendLayForm.Form,
        EccentricReducerLayForm.Form,
        TeeLayForm.Form,
        FlangeLayForm.Form,
        GoreLayForm.Form,
        LatitudeRingLayForm.Form,
        MeridianStripLayForm.Form,
        FlatHeadLayForm.Form,
        PanelLayForm.Form,
        CorrugatedLayForm.Form,
        ShellLayForm.Form,
        SectionLayForm.Form,
        SectionRingLayForm.Form,
        StrapLayForm.Form,
        EdgeLayForm.Form,
        MeasuredAreaLayForm.Form,
    ];
}
