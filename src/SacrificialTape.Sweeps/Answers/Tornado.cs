using System.Globalization;
using System.Text;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>
/// One input at a time from a low to a high share of its values, all others at their medians: the inputs in the order of how far
/// the answer swings.
/// </summary>
/// <remarks>
/// It tells nothing of inputs that act together, nor of those that go together: correlations are left out, since each input moves
/// alone. Inputs whose answer is not a number come last.
/// </remarks>
public sealed class Tornado
{
    private const int TextWidth = 40;

    /// <summary>Works it out: two rows for each input and one in the middle.</summary>
    /// <param name="study">Inputs and model; its design is not used.</param>
    /// <param name="answer">Name of the answer.</param>
    /// <param name="lowShare">The low share, more than 0, less than the high one.</param>
    /// <param name="highShare">The high share, less than 1.</param>
    /// <exception cref="ArgumentException">No answer has that name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range.</exception>
    public Tornado(Study study, string answer, double lowShare = 0.1, double highShare = 0.9)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (!(lowShare > 0 && lowShare < highShare && highShare < 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(lowShare), lowShare, FormattableString.Invariant($"More than 0 and less than the high share, {highShare}, which must be less than 1."));
        }

        this.Answer = answer;
        this.LowShare = lowShare;
        this.HighShare = highShare;
        SweepInputs inputs = study.Inputs;
        var rows = new SweepBlock(inputs, (2 * inputs.Count) + 1) { Rows = (2 * inputs.Count) + 1 };
        for (int i = 0; i < inputs.Count; i++)
        {
            Span<double> column = rows.Column(i);
            column.Fill(inputs.All[i].Values.At(0.5));
            column[(2 * i) + 1] = inputs.All[i].Values.At(lowShare);
            column[(2 * i) + 2] = inputs.All[i].Values.At(highShare);
        }

        AnswerBlock block = study.Answer(rows);
        double[] answers = block[answer].ToArray();
        this.Middle = answers[0];
        this.Bars = [.. inputs.All
            .Select((input, i) => new TornadoBar(
                input.Name, rows[i][(2 * i) + 1], rows[i][(2 * i) + 2], answers[(2 * i) + 1], answers[(2 * i) + 2]))
            .OrderBy(static bar => double.IsNaN(bar.Swing))
            .ThenByDescending(static bar => bar.Swing)];
    }

    /// <summary>Name of the answer.</summary>
    public string Answer { get; }

    /// <summary>The low share.</summary>
    public double LowShare { get; }

    /// <summary>The high share.</summary>
    public double HighShare { get; }

    /// <summary>The answer with all inputs at their medians.</summary>
    public double Middle { get; }

    /// <summary>The inputs, the one with the greatest swing first; equal swings in the order of the inputs.</summary>
    public ValueList<TornadoBar> Bars { get; }

    /// <summary>The tornado as invariant text: a line for each input, with its bar between the least and the greatest answer of all.</summary>
    public override string ToString()
    {
        double[] drawn = [.. this.Bars.SelectMany(static bar => new[] { bar.AtLow, bar.AtHigh }).Append(this.Middle).Where(double.IsFinite)];
        double least = drawn.Length == 0 ? 0 : drawn.Min();
        double width = drawn.Length == 0 ? 0 : drawn.Max() - least;
        int names = Math.Max(4, this.Bars.Max(static bar => bar.Input.Length));
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{this.Answer} {this.Middle:G4} with all inputs at their medians; each at {100 * this.LowShare:0.##} % and {100 * this.HighShare:0.##} %");
        foreach (TornadoBar bar in this.Bars)
        {
            char[] line = new char[TextWidth + 1];
            Array.Fill(line, ' ');
            if (double.IsFinite(bar.AtLow) && double.IsFinite(bar.AtHigh))
            {
                Array.Fill(line, '#', Place(Math.Min(bar.AtLow, bar.AtHigh)), Place(Math.Max(bar.AtLow, bar.AtHigh)) - Place(Math.Min(bar.AtLow, bar.AtHigh)) + 1);
            }

            if (double.IsFinite(this.Middle))
            {
                line[Place(this.Middle)] = '|';
            }

            text.Append('\n').Append(bar.Input.PadRight(names)).Append(' ').Append(line).Append(
                CultureInfo.InvariantCulture, $" {bar.AtLow:G4} at {bar.LowValue:G4}, {bar.AtHigh:G4} at {bar.HighValue:G4}");
        }

        return text.ToString();

        int Place(double value) => width > 0 ? (int)Math.Round((value - least) / width * TextWidth) : TextWidth / 2;
    }
}
