using System.Net;
using System.Text.RegularExpressions;
using Markdig;
using SacrificialTape.Tests.HouseRules;

namespace SacrificialTape.Tests.Provenance;

/// <summary>
/// Workings as Markdown, rendered by the engine that DocFX renders pages with, its mathematics switched on as in
/// docs/docfx.json: every formula comes out as mathematics and every word as it was written.
/// </summary>
public sealed partial class WorkingsAsMarkdown
{
    private static readonly MarkdownPipeline Rendering = new MarkdownPipelineBuilder().UseMathematics().Build();

    // What the formulas use; a command that is not known here may be a slip that the page would show in red.
    private static readonly HashSet<string> Commands = new(
        [
            "alpha", "beta", "gamma", "delta", "Delta", "eta", "theta", "lambda", "mu", "pi", "rho", "sigma", "phi", "varphi", "psi", "Phi", "Gamma", "kappa", "varepsilon", "epsilon", "xi", "tau", "omega", "Omega", "chi", "nu", "zeta",
            "frac", "sqrt", "left", "right", "cdot", "times", "pm", "ge", "le", "ne", "approx", "infty", "sum", "int", "prod", "partial", "lfloor", "rfloor", "lceil", "rceil", "lvert", "rvert", "bigl", "bigr", "Bigl", "Bigr",
            "sin", "cos", "tan", "arcsin", "arccos", "arctan", "ln", "exp", "min", "max", "coth", "sinh", "cosh", "tanh", "log",
            "mathrm", "text", "operatorname", "quad", "qquad", "bar", "hat", "tilde", "perp", "parallel", "dots", "ldots", "dfrac", "tfrac", "overline", "big", "Big", "prime", "circ", "ell", "neq",
        ],
        StringComparer.Ordinal);

    public static TheoryData<string> Formulas() => new(Library.Formulas.Select(static one => one.Formula.Id));

    [Theory]
    [MemberData(nameof(Formulas))]
    public void A_formula_renders_as_mathematics_and_its_words_as_words(string id)
    {
        Formula formula = Library.Formulas.Single(one => one.Formula.Id == id).Formula;
        var step = new WorkingStep(
            formula, new ValueList<Measure>(formula.Inputs.Select(static (symbol, at) => new Measure(1.25 + at, symbol.Unit))), new Measure(-1.5e-7, formula.Result.Unit));
        string html = Markdown.ToHtml(new Workings("A title", [step]).ToMarkdown(), Rendering);
        string[] maths = [.. MathSpan().Matches(html).Select(static one => WebUtility.HtmlDecode(one.Groups["tex"].Value))];
        Assert.Equal(1 + formula.Inputs.Count, maths.Length);
        Assert.EndsWith(" = " + formula.Tex, maths[0], StringComparison.Ordinal);
        Assert.All(maths, Sound);
        Assert.Single(ListItem().Matches(html));
        Assert.Equal(formula.Basis.ToString(), WebUtility.HtmlDecode(Assert.Single(Emphasis().Matches(html)).Groups["text"].Value));

        // Mathematics and tags taken away, the words and numbers of the plain text are left.
        string words = WebUtility.HtmlDecode(Tag().Replace(MathSpan().Replace(html, "@"), string.Empty)).ReplaceLineEndings(" ").Trim();
        string numbers = string.Join(", ", step.Inputs.Select(static one => "@ = " + WorkingStep.Shown(one)));
        string given = numbers.Length == 0 ? string.Empty : ", with " + numbers;
        Assert.EndsWith($"{formula.Result.Meaning}: @ = {WorkingStep.Shown(step.Result)}{given}. {formula.Basis}", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Signs_that_Markdown_takes_for_its_own_are_shown_as_they_stand()
    {
        const string Odd = @"2 * 3 * 4, a_b_c, $5 and $6, <b>, [x](y), `code`, \(z\), #1, ~~no~~, 50 %";
        var formula = new Formula("odd", new Symbol("x", Odd, TradeUnit.One), "a", "a", Basis.Judgement(Odd), [new Symbol("a", Odd, TradeUnit.One)]);
        var workings = new Workings(Odd, [new WorkingStep(formula, [new Measure(1, TradeUnit.One)], new Measure(1, TradeUnit.One))]);
        string html = Markdown.ToHtml(workings.ToMarkdown(), Rendering);
        string text = WebUtility.HtmlDecode(Tag().Replace(html, string.Empty));
        Assert.Equal(3, text.Split(Odd).Length - 1);
        Assert.Equal(2, MathSpan().Count(html));
    }

    [Theory]
    [InlineData("w", "w")]
    [InlineData("theta", @"\theta")]
    [InlineData("n_all", @"n_{\text{all}}")]
    [InlineData("F_1", "F_{1}")]
    [InlineData("rho_20", @"\rho_{20}")]
    [InlineData("e0", @"\mathrm{e0}")]
    [InlineData("lambda_z", @"\lambda_{z}")]
    public void Letters_of_a_formula_in_TeX(string name, string tex)
    {
        Assert.Equal(tex, MarkdownText.MathName(name));
        Sound(MarkdownText.MathName(name));
    }

    [Fact]
    public void The_check_sees_what_would_not_render()
    {
        foreach (string wrong in new[] { @"\frac{a}{b", "a}b", @"\left( a", "50 %", "a # b", "a & b", "$a$", @"\fraq{a}{b}", "a_b_c", "x^a^b", "a_" })
        {
            Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Sound(wrong));
        }
    }

    [Fact]
    public void Text_Markdown_and_data_tell_the_same_steps()
    {
        LineEstimate line = SampleJob.Make().Estimate().Lines[0];
        Workings workings = line.ShowWorkings();
        Assert.NotEmpty(workings.Steps);
        Assert.Equal(workings.Steps.Count, workings.ToString().Split('\n').Length - 1);
        string html = Markdown.ToHtml(workings.ToMarkdown(), Rendering);
        Assert.Equal(workings.Steps.Count, ListItem().Count(html));
        Assert.Equal(workings.Steps.Sum(static step => 1 + step.Inputs.Count), MathSpan().Count(html));
    }

    // Balanced, no sign that TeX takes for a comment or a column, no script on a script, no unknown command.
    private static void Sound(string tex)
    {
        Assert.DoesNotMatch(BareSign(), tex);
        Assert.DoesNotMatch(DoubleScript(), tex);
        Assert.DoesNotMatch(OpenScript(), tex);
        Assert.Equal(Left().Count(tex), Right().Count(tex));
        Assert.All(Command().Matches(tex).Select(static one => one.Groups["name"].Value), static name => Assert.Contains(name, Commands));
        int depth = 0;
        for (int i = 0; i < tex.Length; i++)
        {
            if (tex[i] == '\\')
            {
                i++;
                continue;
            }

            depth += tex[i] == '{' ? 1 : tex[i] == '}' ? -1 : 0;
            Assert.True(depth >= 0, $"A brace too many is closed: {tex}");
        }

        Assert.True(depth == 0, $"A brace stays open: {tex}");
    }

    [GeneratedRegex("""<span class="math">\\\((?<tex>.*?)\\\)</span>""", RegexOptions.Singleline)]
    private static partial Regex MathSpan();

    [GeneratedRegex("<li>")]
    private static partial Regex ListItem();

    [GeneratedRegex("<em>(?<text>.*?)</em>", RegexOptions.Singleline)]
    private static partial Regex Emphasis();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("""(?<!\\)[%#&$~]""")]
    private static partial Regex BareSign();

    [GeneratedRegex("""_(\{[^{}]*\}|[^{}\\^_\s]|\\[A-Za-z]+(\{[^{}]*\})?)_|\^(\{[^{}]*\}|[^{}\\^_\s]|\\[A-Za-z]+(\{[^{}]*\})?)\^""")]
    private static partial Regex DoubleScript();

    [GeneratedRegex("""(?<!\\)[_^]\s*($|\})""")]
    private static partial Regex OpenScript();

    [GeneratedRegex("""\\left(?![a-z])""")]
    private static partial Regex Left();

    [GeneratedRegex("""\\right(?![a-z])""")]
    private static partial Regex Right();

    [GeneratedRegex("""\\(?<name>[A-Za-z]+)""")]
    private static partial Regex Command();
}
