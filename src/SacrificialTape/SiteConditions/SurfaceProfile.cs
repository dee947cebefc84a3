using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>The height of the profile of blasted steel, and its grade on a comparator.</summary>
/// <remarks>Height: 1 to 500 um. Comparators are made for Sa 2 1/2 and Sa 3 only; brushed steel has no grade on them.</remarks>
public sealed record SurfaceProfile
{
    private static readonly double[] Grit = [25, 60, 100, 150];
    private static readonly double[] Shot = [25, 40, 70, 100];

    private readonly StoredNumber um;

    /// <summary>Describes a profile.</summary>
    /// <param name="height">Its height.</param>
    /// <param name="comparator">What was blasted with.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside its range, or there is no such comparator.</exception>
    public SurfaceProfile(Length height, ProfileComparator comparator)
    {
        this.um = new StoredNumber(AcceptedRange.Between(1, 500, "um").Check(UnitConversions.Micrometers(height), nameof(height)));
        this.Comparator = Enum.IsDefined(comparator)
            ? comparator
            : throw new ArgumentOutOfRangeException(nameof(comparator), comparator, "Grit or Shot.");
    }

    /// <summary>On what the nominal heights of the segments rest.</summary>
    public static Basis SegmentBasis => SiteSources.ProfileSegments;

    /// <summary>Its height.</summary>
    public Length Height => Length.FromMicrometers(this.um.Bare);

    /// <summary>What was blasted with.</summary>
    public ProfileComparator Comparator { get; }

    /// <summary>Its grade by the nominal heights of the segments; a comparator has tolerances that are not counted.</summary>
    public ProfileGrade Grade
    {
        get
        {
            double[] segments = this.Comparator == ProfileComparator.Grit ? Grit : Shot;
            double height = this.um.Bare;
            return (ProfileGrade)segments.Count(segment => WithAllowance.AtLeast(height, segment));
        }
    }

    internal double Micrometers => this.um.Bare;

    /// <summary>The nominal height of a segment.</summary>
    /// <param name="comparator">The comparator.</param>
    /// <param name="segment">1 to 4.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such segment or comparator.</exception>
    [BasisOf(typeof(SiteSources), nameof(SiteSources.ProfileSegments))]
    public static Length SegmentHeight(ProfileComparator comparator, int segment)
    {
        AcceptedRange.Between(1, 4, string.Empty).Check(segment);
        return Length.FromMicrometers(comparator switch
        {
            ProfileComparator.Grit => Grit[^(5 - segment)],
            ProfileComparator.Shot => Shot[^(5 - segment)],
            _ => throw new ArgumentOutOfRangeException(nameof(comparator), comparator, "Grit or Shot."),
        });
    }

    /// <summary>Height and grade.</summary>
    public override string ToString() => FormattableString.Invariant($"profile {this.um.Bare:0.#} um, {this.Comparator}, {this.Grade}");
}
