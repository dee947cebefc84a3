namespace SacrificialTape.Documents;

/// <summary>One result that an estimate in a file states otherwise than the library in use works it out.</summary>
public sealed record EstimateDifference
{
    internal EstimateDifference(string place, string stated, string now)
    {
        this.Place = place;
        this.Stated = stated;
        this.Now = now;
    }

    /// <summary>Where: a line or stock, and which of its results.</summary>
    public string Place { get; }

    /// <summary>What the file states.</summary>
    public string Stated { get; }

    /// <summary>What the library in use works out.</summary>
    public string Now { get; }

    /// <summary>Place, then both.</summary>
    public override string ToString() => $"{this.Place}: stated {this.Stated}, now {this.Now}";
}
