using System.Globalization;
using SacrificialTape.Rules;

namespace SacrificialTape.Inspection;

/// <summary>Who took a finding on himself, when, and with what word.</summary>
public sealed record AsBuiltSignature
{
    internal AsBuiltSignature(Finding finding, string by, DateTimeOffset at, string word)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        ArgumentException.ThrowIfNullOrWhiteSpace(word);
        this.Finding = finding;
        this.By = by;
        this.At = at;
        this.Word = word;
    }

    /// <summary>The finding.</summary>
    public Finding Finding { get; }

    /// <summary>Who signed.</summary>
    public string By { get; }

    /// <summary>When.</summary>
    public DateTimeOffset At { get; }

    /// <summary>What was done, or why it may stay.</summary>
    public string Word { get; }

    /// <summary>Rule, place, who, when and the word.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"[{this.Finding.Rule.Id}] {this.Finding.Subject}: {this.Word} ({this.By}, {this.At:yyyy-MM-dd HH:mm zzz})");
}
