using System.Globalization;
using System.Text;
using System.Text.Json;
using SacrificialTape.Quantities;
using SacrificialTape.Sweeps;
using SacrificialTape.Sweeps.Answers;

namespace CoastStudy;

/// <summary>The figures of both studies.</summary>
internal sealed class CoastResult
{
    internal CoastResult(CoastArguments asked, ValueList<AnswerSummary> spread, ValueList<AnswerSummary> shares)
    {
        this.Asked = asked;
        this.Rate = (Moments)spread[0].Summary;
        this.Life = (Moments)spread[1].Summary;
        this.Lives = (Histogram)spread[2].Summary;
        this.Reached = (Exceedance)spread[3].Summary;
        this.Required = (Exceedance)spread[4].Summary;
        this.Shares = (SobolIndices)shares[0].Summary;
    }

    internal CoastArguments Asked { get; }

    internal Moments Rate { get; }

    internal Moments Life { get; }

    internal Histogram Lives { get; }

    /// <summary>At least 0, 2, 4 years and so on.</summary>
    internal Exceedance Reached { get; }

    /// <summary>At least the years required.</summary>
    internal Exceedance Required { get; }

    internal SobolIndices Shares { get; }

    /// <summary>Inputs by their share in all, the largest first.</summary>
    internal IReadOnlyList<(string Input, double Alone, double InAll)> Ranked
    {
        get
        {
            ValueList<double> alone = this.Shares.FirstOrder;
            ValueList<double> all = this.Shares.Total;
            return [.. this.Shares.Inputs.All.Select((input, i) => (input.Name, alone[i], all[i])).OrderByDescending(static one => one.Item3)];
        }
    }

    internal double Quantile(double share) => this.Lives.Quantile(share).Middle;

    internal string ToText()
    {
        var text = new StringBuilder();
        Line($"{this.Life.Count} rows with an answer, {this.Life.NotANumber} without (air outside the data behind the function)");
        Line($"First-year rate: mean {this.Rate.Mean:0.00} um/a, deviation {this.Rate.Deviation:0.00} um/a");
        Line($"Life: median {this.Quantile(0.5):0} a, one in ten at or below {this.Quantile(0.1):0} a, one in twenty at or below {this.Quantile(0.05):0} a");
        Line($"At least {this.Asked.Years} a: {100 * this.Required.Share(0):0.00} % of rows");
        foreach ((string input, double alone, double inAll) in this.Ranked)
        {
            Line($"{input}: alone {alone:0.000}, in all {inAll:0.000} of the variance of life");
        }

        return text.ToString();

        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    internal string ToJson()
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions { Indented = true }))
        {
            json.WriteStartObject();
            json.WriteString("note", CoastSite.Said);
            json.WriteNumber("rows", this.Life.Count);
            json.WriteNumber("rowsWithoutAnswer", this.Life.NotANumber);
            json.WriteNumber("seed", this.Asked.Seed);
            json.WriteNumber("meanRateUmPerYear", this.Rate.Mean);
            json.WriteNumber("meanLifeYears", this.Life.Mean);
            json.WriteNumber("deviationOfLifeYears", this.Life.Deviation);
            json.WriteNumber("requiredYears", this.Asked.Years);
            json.WriteNumber("chanceOfAtLeastRequired", this.Required.Share(0));
            json.WriteStartArray("chanceOfAtLeast");
            for (int i = 0; i < this.Reached.Thresholds.Count; i++)
            {
                json.WriteStartObject();
                json.WriteNumber("years", 2 * i);
                json.WriteNumber("chance", this.Reached.Share(i));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("sensitivity");
            foreach ((string input, double alone, double inAll) in this.Ranked)
            {
                json.WriteStartObject();
                json.WriteString("input", input);
                json.WriteNumber("alone", alone);
                json.WriteNumber("inAll", inAll);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }
}
