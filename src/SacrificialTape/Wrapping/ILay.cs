using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;

namespace SacrificialTape.Wrapping;

/// <summary>How strips lie on a surface: which strips to cut, and how many layers lie where.</summary>
/// <remarks>A host adds its own shapes by a <see cref="Surfaces.Surface"/> and a lay of its own.</remarks>
public interface ILay : IHasWorkings
{
    /// <summary>The surface that is covered.</summary>
    Surface Surface { get; }

    /// <summary>The strip that it is covered with.</summary>
    StripStock Stock { get; }

    /// <summary>The lay in a few words, for a lay sheet.</summary>
    string Description { get; }

    /// <summary>What the crew is told to set, mark and lap.</summary>
    string Instruction { get; }

    /// <summary>How the strips run, for the crew to know where to begin and where the last edge faces.</summary>
    StripCourse Course { get; }

    /// <summary>The strips to cut.</summary>
    ValueList<Strip> Strips { get; }

    /// <summary>The least number of layers over any spot of the surface, ends and wander included.</summary>
    int LayersEverywhere { get; }

    /// <summary>Tape area on the surface over the area of the surface.</summary>
    AreaRatio LayersOnAverage { get; }

    /// <summary>Holds the lay against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the lay, for instance the survey line.</param>
    IEnumerable<Finding> Judge(RuleSet rules, string subject);
}
