using SacrificialTape.Costing;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>A kind of lay that takes part in a choice: it lays any stock with any lap on one surface.</summary>
/// <remarks>
/// The library's own are made by <see cref="LayMaker"/>; a host adds its own kinds. The same arguments must always make
/// the same lay, else a choice cannot be repeated.
/// </remarks>
public interface ILayMaker
{
    /// <summary>Name of the kind, unique within a choice.</summary>
    string Name { get; }

    /// <summary>What is laid on.</summary>
    Surface Surface { get; }

    /// <summary>By which norms the work is priced, and how the strip is laid.</summary>
    LabourKind Labour { get; }

    /// <summary>Makes a lay.</summary>
    /// <param name="stock">The strip.</param>
    /// <param name="leastLap">The least lap.</param>
    /// <param name="choices">End lap, wander, passes, method.</param>
    /// <exception cref="ArgumentException">The lay cannot be made; the message becomes the reason of the rejection.</exception>
    ILay Make(StripStock stock, Length leastLap, LayChoices choices);
}
