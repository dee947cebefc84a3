using System.Text;

namespace SacrificialTape.Provenance;

/// <summary>Plain text and names of symbols as Markdown with TeX takes them.</summary>
internal static class MarkdownText
{
    private const string MeansSomething = @"\`*_[]<>$|#~^";

    /// <summary>Text that reads the same after rendering: whatever Markdown would take for its own is escaped.</summary>
    internal static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (char one in text)
        {
            if (MeansSomething.Contains(one, StringComparison.Ordinal))
            {
                escaped.Append('\\');
            }

            escaped.Append(one);
        }

        return escaped.ToString();
    }

    /// <summary>A symbol in TeX: Greek by its command, long names upright, what follows the first underscore below the line.</summary>
    internal static string MathName(string name)
    {
        int at = name.IndexOf('_', StringComparison.Ordinal);
        return at <= 0 || at == name.Length - 1 ? Letter(name) : $"{Letter(name[..at])}_{{{Index(name[(at + 1)..])}}}";
    }

    private static string Letter(string name) => name switch
    {
        "alpha" or "beta" or "gamma" or "delta" or "eta" or "theta" or "lambda" or "mu" or "rho" or "sigma" or "phi" or "psi" => "\\" + name,
        { Length: 1 } => name,
        _ => $@"\mathrm{{{name.Replace("_", @"\_", StringComparison.Ordinal)}}}",
    };

    private static string Index(string name) => name is { Length: 1 } || name.All(char.IsAsciiDigit) ? name : $@"\text{{{name.Replace("_", @"\_", StringComparison.Ordinal)}}}";
}
