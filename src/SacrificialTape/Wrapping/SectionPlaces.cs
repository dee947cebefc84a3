using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;

namespace SacrificialTape.Wrapping;

/// <summary>What is read off strips that were placed round an outline: folds across each, what is cut, what to ask for instead.</summary>
internal static class SectionPlaces
{
    private const double WidthStepMm = 0.01;

    internal static double WidestFaceMm(SectionOutline outline)
    {
        double widest = 0;
        double start = 0;
        foreach (Fold fold in outline.Folds)
        {
            widest = Math.Max(widest, fold.PositionMm - start);
            start = fold.PositionMm + fold.RunMm;
        }

        return widest;
    }

    /// <summary>Least width that gets round, to a hundredth of a millimetre upwards: a wider strip never gets less far.</summary>
    internal static double LeastWidthMm(LapZones zones, double lapMm)
    {
        double low = lapMm;
        double high = 2 * (zones.PerimeterMm + lapMm);
        while (high - low > WidthStepMm / 4)
        {
            double middle = (low + high) / 2;
            (low, high) = SectionChain.Round(zones, middle, lapMm) is null ? (middle, high) : (low, middle);
        }

        return Math.Ceiling(high / WidthStepMm) * WidthStepMm;
    }

    internal static ValueList<SectionStrip> Layout(
        SectionOutline outline, List<(double Start, double End)> chain, double[] lapsMm, double widthMm)
    {
        double perimeter = outline.PerimeterMm;
        double slack = perimeter * WithAllowance.RelativeAllowance;
        var layout = new SectionStrip[chain.Count];
        for (int i = 0; i < layout.Length; i++)
        {
            (double start, double end) = chain[i];
            var folds = new List<Fold>();
            for (double round = Math.Floor(start / perimeter) * perimeter; round < end; round += perimeter)
            {
                foreach (Fold fold in outline.Folds)
                {
                    double middle = round + fold.PositionMm + (fold.RunMm / 2);
                    if (middle > start + slack && middle < end - slack)
                    {
                        folds.Add(fold.At(round + fold.PositionMm - start));
                    }
                }
            }

            double trim = widthMm - (end - start);
            double place = start - (Math.Floor(start / perimeter) * perimeter);
            layout[i] = new SectionStrip(place, end - start, trim > slack ? trim : 0, lapsMm[i], new ValueList<Fold>(folds));
        }

        return ValueList<SectionStrip>.Owning(layout);
    }

    /// <summary>Folds along a ring whose end lap lies in the middle of the widest flat face.</summary>
    internal static ValueList<Fold> AlongRing(SectionOutline outline, double endLapMm)
    {
        double begin = 0;
        double widest = -1;
        double start = 0;
        foreach (Fold fold in outline.Folds)
        {
            double face = fold.PositionMm - start;
            if (face > widest + (outline.PerimeterMm * WithAllowance.RelativeAllowance))
            {
                widest = face;
                begin = start + ((face - endLapMm) / 2);
            }

            start = fold.PositionMm + fold.RunMm;
        }

        return new(outline.Folds
            .Select(fold => fold.At(fold.PositionMm - begin + (fold.PositionMm < begin ? outline.PerimeterMm : 0)))
            .OrderBy(static fold => fold.PositionMm));
    }

    /// <summary>Whole strips together, trimmed ones by how much is trimmed; each covers what the one before left.</summary>
    internal static ValueList<Strip> Strips(
        StripStock stock, List<(double Start, double End)> chain, ValueList<SectionStrip> layout, Section section, int passes)
    {
        double perimeter = section.PerimeterMm(default(Provenance.NoSteps));
        var covered = new Dictionary<double, (double CoverMm, int Count)>();
        for (int i = 0; i < chain.Count; i++)
        {
            double before = i > 0 ? chain[i - 1].End : chain[^1].End - perimeter;
            double trim = Math.Round(layout[i].TrimMm, 6);
            (double sum, int count) = covered.GetValueOrDefault(trim);
            covered[trim] = (sum + chain[i].End - before, count + 1);
        }

        double perWidth = section.LengthMm / stock.WidthMm;
        return new(covered.OrderBy(static group => group.Key).Select(group => Strip.Computed(
            stock,
            section.LengthMm,
            group.Value.Count * passes,
            StripPurpose.AlongSection,
            true,
            group.Value.CoverMm / group.Value.Count * perWidth,
            group.Key * perWidth)));
    }
}
