using System.Buffers;
using System.Diagnostics.CodeAnalysis;

namespace SacrificialTape.Rules;

/// <summary>A SHA-256 hash by which two documents can be told apart without reading them.</summary>
/// <remarks>Text: <c>sha256:</c> and 64 lower-case hexadecimal digits. A <c>default</c> value is unset and says so.</remarks>
public readonly record struct Fingerprint : IParsable<Fingerprint>
{
    private const string Prefix = "sha256:";
    private const int DigitCount = 64;

    private static readonly SearchValues<char> Hexadecimal = SearchValues.Create("0123456789abcdef");

    private readonly string? hex;

    private Fingerprint(string hex) => this.hex = hex;

    /// <summary>The 64 hexadecimal digits, in lower case.</summary>
    public string Digits => this.hex ?? throw new InvalidOperationException(
        "This Fingerprint is unset: it is a default value that no hash has filled.");

    /// <summary>Reads a fingerprint.</summary>
    /// <param name="text"><c>sha256:</c> and 64 lower-case hexadecimal digits.</param>
    /// <exception cref="FormatException">The text is not a fingerprint.</exception>
    public static Fingerprint Parse(string text) => Parse(text, null);

    /// <inheritdoc cref="Parse(string)"/>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: a fingerprint is the same in every culture.</param>
    public static Fingerprint Parse(string s, IFormatProvider? provider)
    {
        ArgumentNullException.ThrowIfNull(s);
        return TryParse(s, provider, out Fingerprint read) ? read : throw new FormatException(
            $"'{s}' is not a fingerprint. Expected '{Prefix}' and {DigitCount} hexadecimal digits in lower case.");
    }

    /// <summary>Reads a fingerprint, or says false.</summary>
    /// <param name="s">The text.</param>
    /// <param name="provider">Not used: a fingerprint is the same in every culture.</param>
    /// <param name="result">The fingerprint.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out Fingerprint result)
    {
        bool read = s is not null && s.Length == Prefix.Length + DigitCount && s.StartsWith(Prefix, StringComparison.Ordinal)
            && s.AsSpan(Prefix.Length).IndexOfAnyExcept(Hexadecimal) < 0;
        result = read ? new Fingerprint(s![Prefix.Length..]) : default;
        return read;
    }

    internal static Fingerprint OfHash(ReadOnlySpan<byte> sha256) => new(Convert.ToHexStringLower(sha256));

    /// <summary><c>sha256:</c> and 64 hexadecimal digits; <c>unset</c> for a default value.</summary>
    public override string ToString() => this.hex is null ? "unset" : Prefix + this.hex;
}
