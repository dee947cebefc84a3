using SacrificialTape.Costing;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>A kind of lay for a choice: one of the library's own, or any other made by a function.</summary>
/// <remarks>Immutable as long as the function is.</remarks>
public sealed class LayMaker : ILayMaker
{
    private readonly Func<StripStock, Length, LayChoices, ILay> make;

    /// <summary>Describes a kind of lay.</summary>
    /// <param name="name">Its name, unique within a choice.</param>
    /// <param name="surface">What is laid on.</param>
    /// <param name="labour">By which norms the work is priced, and how the strip is laid.</param>
    /// <param name="make">Makes the lay of a stock with a least lap; the same arguments must make the same lay.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public LayMaker(string name, Surface surface, LabourKind labour, Func<StripStock, Length, LayChoices, ILay> make)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(surface);
        ArgumentNullException.ThrowIfNull(labour);
        ArgumentNullException.ThrowIfNull(make);
        this.Name = name;
        this.Surface = surface;
        this.Labour = labour;
        this.make = make;
    }

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Surface Surface { get; }

    /// <inheritdoc/>
    public LabourKind Labour { get; }

    /// <summary>Spirals by their true lap.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="ends">What is done at the ends; left out: trimmed flush.</param>
    /// <param name="method">How the strip is laid.</param>
    /// <param name="surface">The surface in the user's own word, as in the labour norms.</param>
    public static LayMaker Spiral(
        StraightPipe pipe, SpiralEnds? ends = null, ApplicationMethod method = ApplicationMethod.ByHand, string surface = "pipe")
    {
        int turns = (ends ?? SpiralEnds.TrimmedFlush).LevelTurnsAtEachEnd;
        return new(
            Named(turns == 0 ? "spiral, ends trimmed flush" : $"spiral, {turns} level turn(s) at each end", method),
            pipe,
            new LabourKind(StripPurpose.Spiral, method, surface),
            (stock, lap, choices) => new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(lap), ends, choices));
    }

    /// <summary>Rings on a straight pipe.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="method">How the strip is laid.</param>
    /// <param name="surface">The surface in the user's own word, as in the labour norms.</param>
    public static LayMaker Rings(StraightPipe pipe, ApplicationMethod method = ApplicationMethod.ByHand, string surface = "pipe") => new(
        Named("rings", method),
        pipe,
        new LabourKind(StripPurpose.Ring, method, surface),
        (stock, lap, choices) => new RingLay(pipe, stock, lap, choices));

    /// <summary>Strips along a straight pipe.</summary>
    /// <param name="pipe">The pipe.</param>
    /// <param name="method">How the strip is laid.</param>
    /// <param name="surface">The surface in the user's own word, as in the labour norms.</param>
    public static LayMaker AlongPipe(StraightPipe pipe, ApplicationMethod method = ApplicationMethod.ByHand, string surface = "pipe") => new(
        Named("strips along", method),
        pipe,
        new LabourKind(StripPurpose.AlongPipe, method, surface),
        (stock, lap, choices) => new AlongPipeLay(pipe, stock, lap, choices));

    /// <summary>Rings on a bend.</summary>
    /// <param name="bend">The bend.</param>
    /// <param name="method">How the strip is laid.</param>
    /// <param name="surface">The surface in the user's own word, as in the labour norms.</param>
    public static LayMaker BendRings(Bend bend, ApplicationMethod method = ApplicationMethod.ByHand, string surface = "bend") => new(
        Named("rings", method),
        bend,
        new LabourKind(StripPurpose.Ring, method, surface),
        (stock, lap, choices) => new BendRingLay(bend, stock, lap, choices));

    /// <summary>A kind of lay on every span of a pipe with bands that stay clear.</summary>
    /// <param name="pipe">The pipe with its bands.</param>
    /// <param name="span">The kind of lay on the pipe of a span, for instance <c>span => LayMaker.Rings(span)</c>.</param>
    public static LayMaker Interrupted(InterruptedPipe pipe, Func<StraightPipe, ILayMaker> span)
    {
        ArgumentNullException.ThrowIfNull(pipe);
        ArgumentNullException.ThrowIfNull(span);
        ILayMaker first = span(pipe.Spans[0].Pipe);
        return new(
            first.Name + ", span by span",
            pipe,
            first.Labour,
            (stock, lap, choices) => InterruptedLay.Of(pipe, one => span(one).Make(stock, lap, choices)));
    }

    /// <inheritdoc/>
    public ILay Make(StripStock stock, Length leastLap, LayChoices choices) => this.make(stock, leastLap, choices);

    /// <summary>The name.</summary>
    public override string ToString() => this.Name;

    private static string Named(string name, ApplicationMethod method) =>
        method == ApplicationMethod.WrappingHead ? name + ", wrapping head" : name;
}
