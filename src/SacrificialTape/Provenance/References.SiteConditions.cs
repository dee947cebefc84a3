namespace SacrificialTape.Provenance;

/// <content>Documents on humidity and on surfaces before they are covered.</content>
public static partial class References
{
    /// <summary>Saturation over water, the default set.</summary>
    internal static SourceReference SaturationWmo { get; } = new(
        "sonntag-1990-water", "Sonntag, Z. Meteorol. 40 (1990) 340; WMO-No. 8, annex on formulae of humidity", "saturation over water",
        "6.112 hPa, 17.62, 243.12 degC", SourceReading.SecondHand);

    /// <summary>Saturation over water.</summary>
    internal static SourceReference SaturationAlduchov { get; } = new(
        "alduchov-eskridge-1996", "Alduchov and Eskridge, J. Appl. Meteorol. 35 (1996) 601", "improved Magnus form over water",
        "6.1094 hPa, 17.625, 243.04 degC", SourceReading.SecondHand);

    /// <summary>Saturation over water.</summary>
    internal static SourceReference SaturationBuck { get; } = new(
        "buck-1981", "Buck, J. Appl. Meteorol. 20 (1981) 1527", "e_w1 over water",
        "6.1121 hPa, 17.502, 240.97 degC, -20 to 50 degC", SourceReading.Recalled);

    /// <summary>Saturation over water.</summary>
    internal static SourceReference SaturationBolton { get; } = new(
        "bolton-1980", "Bolton, Mon. Wea. Rev. 108 (1980) 1046", "equation 10, as the documentation of an open meteorological library prints it",
        "6.112 hPa, 17.67, 243.5 degC", SourceReading.SecondHand);

    /// <summary>Saturation over water.</summary>
    internal static SourceReference SaturationTetens { get; } = new(
        "fao-56-saturation", "Allen et al., FAO Irrigation and Drainage Paper 56, 1998", "equation 11",
        "0.6108 kPa, 17.27, 237.3 degC", SourceReading.SecondHand);

    /// <summary>Saturation over ice.</summary>
    internal static SourceReference SaturationWmoIce { get; } = new(
        "wmo-8-ice", "WMO-No. 8, annex on formulae of humidity", "saturation over ice",
        "6.112 hPa, 22.46, 272.62 degC, -65 to 0 degC", SourceReading.Recalled);

    /// <summary>Humidity from two thermometers.</summary>
    internal static SourceReference PsychrometricEquation { get; } = new(
        "psychrometric-equation", "WMO-No. 8, part on humidity, as the documentation of an open meteorological library prints it", "psychrometric vapour pressure",
        "e = e_w(T_w) - A p (T - T_w); with A = 6.21e-4 1/K, 958 hPa, 25 and 12 degC: 627.52 Pa, 19.84 %", SourceReading.FirstHand);

    /// <summary>Coefficients of psychrometers.</summary>
    internal static SourceReference PsychrometerCoefficients { get; } = new(
        "fao-56-psychrometers", "Allen et al., FAO Irrigation and Drainage Paper 56, 1998", "text under equation 16",
        "0.000662 aspirated at some 5 m/s, 0.0008 naturally ventilated, 0.0012 not ventilated, indoors, 1/K", SourceReading.SecondHand);

    /// <summary>Margin over the dew point and humidity for work on surfaces.</summary>
    internal static SourceReference DewPointMargin { get; } = new(
        "iso-8502-4-margin", "ISO 8502-4 and ISO 12944-7", "guidance on the probability of condensation",
        "Surface 3 degC above the dew point; humidity below 85 %; 20 degC and 70 %: 17.4 degC; 10 degC and 90 %: 11.4 degC", SourceReading.SecondHand);

    /// <summary>Application temperatures of pressure-sensitive tape.</summary>
    internal static SourceReference AdhesiveApplicationGuidance { get; } = new(
        "tape-application-guidance", "Guidance of tape makers and a trade association for pressure-sensitive tape, without names", "application temperature",
        "Above 4 to 10 degC; some say 15 degC", SourceReading.FirstHand);

    /// <summary>Dust before a coating.</summary>
    internal static SourceReference DustLimit { get; } = new(
        "imo-msc-215-82-dust", "IMO resolution MSC.215(82), performance standard for protective coatings", "Table 1, dust",
        "Quantity rating 1 for size classes 3, 4 and 5", SourceReading.Recalled);

    /// <summary>Salts before a coating.</summary>
    internal static SourceReference SaltLimit { get; } = new(
        "imo-msc-1-circ-1378-salts", "IMO MSC.1/Circ.1378", "performance standard, Table 1, item 2",
        "Conductivity equivalent to at most 50 mg/m2 of sodium chloride", SourceReading.FirstHand);

    /// <summary>Conductivity to salts.</summary>
    internal static SourceReference SaltConductivityConversion { get; } = new(
        "iso-8502-9-conversion", "ISO 8502-9", "calculation of the surface density",
        "c about 5 kg/(m2.S)", SourceReading.Recalled);

    /// <summary>Sa 3 and its nearest name.</summary>
    internal static SourceReference SurfaceGradeNames { get; } = new(
        "iso-8501-1-sa-3", "ISO 8501-1; SSPC and NACE joint standards", "Sa 3",
        "Sa 3 nearest to SP 5 / No. 1", SourceReading.FirstHand);

    /// <summary>The other grades and their nearest names.</summary>
    internal static SourceReference SurfaceGradeNamesRecalled { get; } = new(
        "iso-8501-grades", "ISO 8501-1 and ISO 8501-4; SSPC and NACE joint standards", "grades",
        "St 2, St 3, Sa 1, Sa 2, Sa 2 1/2, Wa 1, Wa 2, Wa 2 1/2 with the nearest of SP 2, 3, 7, 6, 10 and WJ-4, 3, 2", SourceReading.Recalled);

    /// <summary>Segments of profile comparators.</summary>
    internal static SourceReference ProfileComparators { get; } = new(
        "iso-8503-1-segments", "Data sheet of an instrument that quotes ISO 8503-1 and -2", "nominal values of the segments",
        "Grit 25, 60, 100, 150 um; shot 25, 40, 70, 100 um; for Sa 2 1/2 and Sa 3 only", SourceReading.SecondHand);

    private static IEnumerable<SourceReference> SiteConditions =>
    [
        SaturationWmo, SaturationAlduchov, SaturationBuck, SaturationBolton, SaturationTetens, SaturationWmoIce,
        PsychrometricEquation, PsychrometerCoefficients, DewPointMargin, AdhesiveApplicationGuidance, DustLimit, SaltLimit,
        SaltConductivityConversion, SurfaceGradeNames, SurfaceGradeNamesRecalled, ProfileComparators,
    ];
}
