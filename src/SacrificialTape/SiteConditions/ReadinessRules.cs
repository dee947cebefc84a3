using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.SiteConditions;

/// <summary>Which rule each reading of a surface is held against.</summary>
internal static class ReadinessRules
{
    internal static IEnumerable<Finding> Judge(SurfaceReading reading, RuleSet rules, string subject) =>
        new[] { Weather(reading, rules, subject), Cleanness(reading, rules, subject), Rest(reading, rules, subject) }
            .SelectMany(static part => part)
            .OfType<Finding>();

    /// <summary>What the air and the temperatures say: shared with the hours of a log.</summary>
    internal static IEnumerable<Finding?> Air(MoistAir air, double surfaceC, RuleSet rules, string subject)
    {
        yield return rules[RuleIds.MaximumHumidity].Judge(new Measure(air.Percent, TradeUnit.Percent), subject);
        yield return rules[RuleIds.MinimumDewPointMargin].Judge(new Measure(surfaceC - air.DewPointCelsius, TradeUnit.Kelvin), subject);
        foreach (Finding? finding in Surface(surfaceC, rules, subject))
        {
            yield return finding;
        }
    }

    /// <summary>What the temperature of the surface says alone.</summary>
    internal static IEnumerable<Finding?> Surface(double surfaceC, RuleSet rules, string subject)
    {
        var surface = new Measure(surfaceC, TradeUnit.DegreeCelsius);
        yield return rules[RuleIds.MinimumApplicationTemperature].Judge(surface, subject);
        yield return rules[RuleIds.MaximumLayingTemperature].Judge(surface, subject);
    }

    private static IEnumerable<Finding?> Weather(SurfaceReading reading, RuleSet rules, string subject)
    {
        Finding Missing(string what) => rules[RuleIds.SurfaceNotMeasured].State($"{subject}, {what}");
        switch (reading.Air, reading.SurfaceCelsius.IsSet)
        {
            case ({ } air, true):
                foreach (Finding? finding in Air(air, reading.SurfaceCelsius.Bare, rules, subject))
                {
                    yield return finding;
                }

                break;
            case ({ } air, false):
                yield return rules[RuleIds.MaximumHumidity].Judge(new Measure(air.Percent, TradeUnit.Percent), subject);
                yield return Missing("surface temperature");
                break;
            case (null, true):
                foreach (Finding? finding in Surface(reading.SurfaceCelsius.Bare, rules, subject))
                {
                    yield return finding;
                }

                yield return Missing("temperature and humidity of the air");
                break;
            default:
                yield return Missing("temperature and humidity of the air");
                yield return Missing("surface temperature");
                break;
        }

        yield return reading.ServiceCelsius.IsSet
            ? rules[RuleIds.AdhesiveServiceTemperature].Judge(new Measure(reading.ServiceCelsius.Bare, TradeUnit.DegreeCelsius), subject)
            : Missing("service temperature");
        yield return reading.Wetness switch
        {
            null => Missing("dryness"),
            SurfaceWetness.Dry => null,
            _ => rules[RuleIds.SurfaceNotDry].State(subject),
        };
        yield return reading.DryHours.IsSet
            ? rules[RuleIds.MinimumDryBefore].Judge(new Measure(reading.DryHours.Bare, TradeUnit.Hour), subject)
            : Missing("how long it has been dry");
        yield return reading.DwellHours.IsSet
            ? rules[RuleIds.MinimumDwell].Judge(new Measure(reading.DwellHours.Bare, TradeUnit.Hour), subject)
            : Missing("how long it will stay dry");
    }

    private static IEnumerable<Finding?> Cleanness(SurfaceReading reading, RuleSet rules, string subject)
    {
        Finding Missing(string what) => rules[RuleIds.SurfaceNotMeasured].State($"{subject}, {what}");
        if (reading.Cleaning is not { } grade)
        {
            yield return Missing("cleaning grade");
        }
        else
        {
            CleaningMethod method = CleaningGrades.MethodOf(grade);
            string rule = method switch
            {
                CleaningMethod.Tool => RuleIds.MinimumToolCleaning,
                CleaningMethod.Blast => RuleIds.MinimumBlastCleaning,
                _ => RuleIds.MinimumJetCleaning,
            };
            yield return rules[rule].Judge(new Measure(CleaningGrades.NumberOf(grade), TradeUnit.One), subject);
            if (method == CleaningMethod.WaterJet && reading.FlashRust is null)
            {
                yield return Missing("flash rust after water jetting");
            }

            if (grade is CleaningGrade.Sa2Half or CleaningGrade.Sa3 && reading.Profile is null)
            {
                yield return Missing("profile of blasted steel");
            }
        }

        if (reading.FlashRust is { } rust)
        {
            yield return rules[RuleIds.MaximumFlashRust].Judge(new Measure((int)rust, TradeUnit.One), subject);
        }

        if (reading.Profile is { } profile)
        {
            yield return rules[RuleIds.MaximumProfile].Judge(new Measure(profile.Micrometers, TradeUnit.Micrometer), subject);
        }
    }

    private static IEnumerable<Finding?> Rest(SurfaceReading reading, RuleSet rules, string subject)
    {
        Finding Missing(string what) => rules[RuleIds.SurfaceNotMeasured].State($"{subject}, {what}");
        if (reading.Dust is { } dust)
        {
            yield return rules[RuleIds.MaximumDustQuantity].Judge(new Measure(dust.Quantity, TradeUnit.One), subject);
            yield return rules[RuleIds.MaximumDustSize].Judge(new Measure(dust.SizeClass, TradeUnit.One), subject);
        }
        else
        {
            yield return Missing("dust");
        }

        if (reading.Residues is { } residues)
        {
            foreach (SurfaceResidue residue in residues.Distinct().Order())
            {
                yield return rules[RuleOf(residue)].State(subject);
            }
        }
        else
        {
            yield return Missing("oil, wax, silicone and bitumen");
        }

        yield return reading.SaltsMgM2.IsSet
            ? rules[RuleIds.MaximumSalts].Judge(new Measure(reading.SaltsMgM2.Bare, TradeUnit.MilligramPerSquareMeter), subject)
            : Missing("soluble salts");
        yield return reading.Paint switch
        {
            null => Missing("paint"),
            PaintSoundness.Loose => rules[RuleIds.LoosePaint].State(subject),
            PaintSoundness.SoundButSmooth => rules[RuleIds.SmoothPaint].State(subject),
            _ => null,
        };
    }

    private static string RuleOf(SurfaceResidue residue) => residue switch
    {
        SurfaceResidue.Oil => RuleIds.OilOnSurface,
        SurfaceResidue.Wax => RuleIds.WaxOnSurface,
        SurfaceResidue.Silicone => RuleIds.SiliconeOnSurface,
        _ => RuleIds.BitumenOnSurface,
    };
}
