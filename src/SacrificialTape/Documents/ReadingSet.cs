using SacrificialTape.Inspection;

namespace SacrificialTape.Documents;

/// <summary>Readings of worn foil as they were taken: where, when, by whom, with what.</summary>
public sealed record ReadingSet
{
    /// <summary>Describes a set.</summary>
    /// <param name="place">Where they were taken, unique in a document: the tag of a line, and where on it.</param>
    /// <param name="takenOn">The day.</param>
    /// <param name="by">Who took them.</param>
    /// <param name="instrument">With what: gauge or balance, and when it was last checked.</param>
    /// <param name="readings">The readings and the foil they are of.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public ReadingSet(string place, DateOnly takenOn, string by, string instrument, FoilReadings readings)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        ArgumentException.ThrowIfNullOrWhiteSpace(instrument);
        ArgumentNullException.ThrowIfNull(readings);
        this.Place = place;
        this.TakenOn = takenOn;
        this.By = by;
        this.Instrument = instrument;
        this.Readings = readings;
    }

    /// <summary>Where they were taken.</summary>
    public string Place { get; }

    /// <summary>The day.</summary>
    public DateOnly TakenOn { get; }

    /// <summary>Who took them.</summary>
    public string By { get; }

    /// <summary>With what.</summary>
    public string Instrument { get; }

    /// <summary>The readings and the foil they are of.</summary>
    public FoilReadings Readings { get; }

    /// <summary>Place, day and number in a few words.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{this.Place}, {this.TakenOn:yyyy-MM-dd}: {this.Readings.Readings.Count} reading(s) by {this.By}");
}
