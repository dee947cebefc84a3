namespace SacrificialTape.PublishedValues;

/// <summary>Every check, in the order of the page.</summary>
internal static class AllChecks
{
    internal static IReadOnlyList<CheckGroup> Groups { get; } =
    [
        TapingACylinderChecks.Group,
        SpiralByMeasureChecks.Group,
        CoverBySamplingChecks.Group,
        StripByStripChecks.Group,
        CylinderChecks.Group,
        ElbowChecks.Group,
        MaterialOnARollChecks.Group,
        CuttingStockChecks.Group,
        PipeSizesAsmeChecks.Group,
        PipeSizesIsoChecks.Group,
        ButtWeldFittingChecks.Group,
        ReducerAreaChecks.Group,
        TeeAreaChecks.Group,
        HeadAreaChecks.Group,
        ShellAreaChecks.Group,
        FlangeChecks.Group,
        PanelAreaChecks.Group,
        FaceStripChecks.Group,
        SectionPerimeterChecks.Group,
        SectionOutlineChecks.Group,
        EdgeAndSupportChecks.Group,
        WasherChecks.Group,
        ZincSheetConversionChecks.Group,
        HotDipMassChecks.Group,
        CorrosivityCategoryChecks.Group,
        CategoryByUnitChecks.Group,
        CorragSiteChecks.Group,
        DoseResponseChecks.Group,
        DoseResponseSiteChecks.Group,
        SiteClassChecks.Group,
        CouponChecks.Group,
        ZincPanelChecks.Group,
        WaterAndSoilChecks.Group,
        LossCurveChecks.Group,
        LifeToFirstMaintenanceChecks.Group,
        LifeTableChecks.Group,
        PowerLawChecks.Group,
        AttackByCategoryChecks.Group,
        AverageRateChecks.Group,
        LifeByLawChecks.Group,
        NormalQuantileChecks.Group,
        LifeSpreadChecks.Group,
        FaradayChecks.Group,
        AnodeDesignChecks.Group,
        ThinFilmChecks.Group,
        ContactResistanceChecks.Group,
        ContactPlacesChecks.Group,
        InterestFactorChecks.Group,
        MinorUnitChecks.Group,
        TemperatureLimitChecks.Group,
        SiteLimitChecks.Group,
        DuplexChecks.Group,
        CommonPracticeChecks.Group,
    ];

    internal static IReadOnlyList<PublishedCase> Cases { get; } = [.. Groups.SelectMany(static group => group.Cases)];

    internal static IReadOnlyDictionary<string, PublishedCase> ById { get; } =
        Cases.DistinctBy(static check => check.Id).ToDictionary(static check => check.Id, StringComparer.Ordinal);
}
