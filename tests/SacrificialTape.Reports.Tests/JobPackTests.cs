using System.Globalization;
using System.Xml.Linq;
using SacrificialTape.Documents;

namespace SacrificialTape.Reports.Tests;

/// <summary>The job pack as a page: what stands on it, and that it says what the estimate says.</summary>
public sealed class JobPackTests
{
    private static readonly JobEstimate Estimate = Samples.Estimate();

    private static readonly string[] Marks =
    [
        "**Clean:**", "HOLD POINT, clean and dry", "**Windows:**", "HOLD POINT, bare metal under paint", "**Lay:**", "HOLD POINT, laps", "**Roll down:**", "HOLD POINT, rolled down",
    ];

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Cautions_and_stops_stand_before_everything_that_is_to_be_done()
    {
        string html = new JobPack(Estimate).ToHtml();
        string[] headings = [.. Page(html).Descendants("h2").Select(static heading => heading.Value)];

        Assert.Equal(["Summary", "Before anyone begins", "To order", "Lay sheet", "Life of the zinc", "Cut list", "Findings", "Crew sheets"], headings);
        XElement stops = Page(html).Descendants("div").First(static div => (string?)div.Attribute("class") == "caution");
        Assert.Contains("must not be taped", stops.Value, StringComparison.Ordinal);
        Assert.Contains("A-5", stops.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_line_finding_and_number_of_the_estimate_is_on_it()
    {
        XElement page = Page(new JobPack(Estimate).ToHtml());

        Assert.Equal(Estimate.Lines.Select(static line => line.Line.Tag), Column(Table(page, "How each line"), 0));
        Assert.Equal(Estimate.Lines.Select(static line => line.Line.Tag), Column(Table(page, "Years"), 0));
        Assert.Equal(
            Estimate.Findings.Select(static finding => finding.Rule.Id).Distinct().Order(StringComparer.Ordinal),
            Column(Table(page, "Open findings"), 3).Distinct().Order(StringComparer.Ordinal));
        Assert.Contains(Estimate.RuleSetFingerprint.ToString(), page.Value, StringComparison.Ordinal);
        XElement order = Table(page, "Strip by stock");
        Assert.Equal(
            Estimate.TakeOff.Stocks.Select(static stock => stock.Rolls.ToString("N0", CultureInfo.InvariantCulture)), Column(order, 2));
        Assert.Equal(Estimate.TakeOff.Stocks.Select(static stock => stock.Ledger.Bought.Meters.ToString("N1", CultureInfo.InvariantCulture)), Column(order, 4));
    }

    [Fact]
    public void Rolls_of_the_cut_list_are_those_to_order()
    {
        XElement page = Page(new JobPack(Estimate).ToHtml());
        long cut = page.Descendants("table").Where(static table => table.Element("caption")!.Value.Contains("roll(s) of", StringComparison.Ordinal))
            .SelectMany(static table => Column(table, 0)).Sum(static rolls => long.Parse(rolls, NumberStyles.AllowThousands, CultureInfo.InvariantCulture));

        Assert.Equal(Estimate.TakeOff.Stocks.Sum(static stock => stock.PlanCuts().Rolls), cut);
    }

    [Fact]
    public void Every_table_is_whole_every_place_is_found_and_headings_skip_no_level()
    {
        XElement page = Page(new JobPack(Estimate, new JobPackOptions { WithWorkings = true }).ToHtml());

        Assert.All(page.Descendants("table"), static table => Assert.All(
            table.Descendants("tr"), row => Assert.Equal(table.Element("thead")!.Element("tr")!.Elements().Count(), row.Elements().Count())));
        Assert.All(page.Descendants("table"), static table => Assert.NotEmpty(table.Element("caption")!.Value));
        string[] ids = [.. page.Descendants().Attributes("id").Select(static id => id.Value)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(page.Descendants("a"), link => Assert.Contains(link.Attribute("href")!.Value[1..], ids));
        int level = 1;
        foreach (XElement heading in page.Descendants().Where(static one => one.Name.LocalName is "h2" or "h3"))
        {
            int own = heading.Name.LocalName[1] - '0';
            Assert.True(own <= level + 1, heading.Value);
            level = own;
        }

        Assert.Equal("en", page.Attribute("lang")!.Value);
        Assert.All(page.Descendants(Svg + "svg"), static picture =>
        {
            Assert.Equal("img", picture.Attribute("role")!.Value);
            Assert.NotEmpty(picture.Attribute("aria-label")!.Value);
            Assert.NotEmpty(picture.Element(Svg + "desc")!.Value);
        });
    }

    [Fact]
    public void The_page_asks_for_nothing_from_elsewhere()
    {
        XElement page = Page(new JobPack(Estimate).ToHtml());

        Assert.DoesNotContain(page.Descendants(), static one => one.Name.LocalName is "script" or "link" or "img" or "iframe" or "object");
        Assert.All(page.Descendants().Attributes().Where(static one => one.Name.LocalName is "href" or "src"), static one => Assert.StartsWith("#", one.Value, StringComparison.Ordinal));
        Assert.DoesNotContain("url(", page.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("@import", page.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_stops_has_no_step_to_wait_at()
    {
        string text = new JobPack(Estimate).ToMarkdown();
        string stopped = text[text.IndexOf("### A-5", StringComparison.Ordinal)..];

        Assert.Contains("Do not begin", stopped, StringComparison.Ordinal);
        Assert.DoesNotContain("HOLD POINT", stopped, StringComparison.Ordinal);
        Assert.Contains("HOLD POINT", text, StringComparison.Ordinal);
    }

    // The crew waits where the work makes the thing that is looked at, not at the end of the sheet.
    [Fact]
    public void Hold_points_stand_after_the_work_that_they_look_at()
    {
        string text = new JobPack(Estimate).ToMarkdown();
        int from = text.IndexOf("### A-3", StringComparison.Ordinal);
        string sheet = text[from..text.IndexOf("### A-4", from, StringComparison.Ordinal)];
        int[] places = [.. Marks
            .Select(mark => sheet.IndexOf(mark, StringComparison.Ordinal))];

        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Names_from_outside_are_text_and_never_markup()
    {
        JobEstimate hostile = Samples.Estimate("<script>alert(1)</script> | *x* [y](z)");

        Assert.DoesNotContain("<script>", new JobPack(hostile).ToHtml(), StringComparison.Ordinal);
        Assert.StartsWith("# Job pack: \\<script\\>alert(1)\\</script\\> \\| \\*x\\* \\[y\\](z)", new JobPack(hostile).ToMarkdown(), StringComparison.Ordinal);
    }

    // A foot is 0.3048 m, an inch 25.4 mm, by definition.
    [Fact]
    public void Numbers_stand_in_the_units_and_the_culture_that_are_asked_for()
    {
        StripLedger ledger = Estimate.TakeOff.Stocks[^1].Ledger;
        double feet = ledger.Bought.Meters / 0.3048;

        XElement us = Page(new JobPack(Estimate, new JobPackOptions { Units = ReportUnits.UsCustomary, Culture = new CultureInfo("en-US") }).ToHtml());
        XElement german = Page(new JobPack(Estimate, new JobPackOptions { Culture = new CultureInfo("de-DE") }).ToHtml());

        Assert.True(feet > 1000);
        Assert.Equal(feet.ToString("N1", new CultureInfo("en-US")), Column(Table(us, "Strip by stock"), 4)[^1]);
        Assert.Contains(" mil x 3.937 in", Column(Table(us, "Strip by stock"), 0)[^1], StringComparison.Ordinal);
        Assert.Equal(ledger.Bought.Meters.ToString("N1", new CultureInfo("de-DE")), Column(Table(german, "Strip by stock"), 4)[^1]);
        Assert.Contains(",", Column(Table(german, "Strip by stock"), 4)[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_waived_finding_is_told_apart_with_who_and_why()
    {
        Finding finding = Estimate.Findings.First(static one => one.Severity == Severity.Warning);
        var waiver = new Waiver(finding.Rule.Id, finding.Subject, "stripped last year", "A. Person", new DateOnly(2026, 5, 1));
        var day = new DateOnly(2026, 6, 1);

        var pack = new JobPack(Estimate, new JobPackOptions { Day = day, Waivers = [waiver] });
        XElement waived = Table(Page(pack.ToHtml()), "Waived findings");

        Assert.Contains(finding.Message, Column(waived, 1));
        Assert.Contains("A. Person", Column(waived, 2)[0], StringComparison.Ordinal);
        Assert.Equal("stripped last year", Column(waived, 3)[0]);
        Assert.DoesNotContain(pack.Findings.Open, open => open.Rule.Id == finding.Rule.Id && open.Subject == finding.Subject);
    }

    [Fact]
    public void Waivers_without_a_day_are_refused()
    {
        Finding finding = Estimate.Findings[0];
        var waiver = new Waiver(finding.Rule.Id, finding.Subject, "reason", "A. Person", new DateOnly(2026, 5, 1));

        Assert.Contains("day", Assert.Throws<ArgumentException>(() => new JobPack(Estimate, new JobPackOptions { Waivers = [waiver] })).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(static () => new JobPack(null!));
    }

    // ISO 4217: the yen has no minor unit. Of a code that the library does not know the digits must be stated.
    [Fact]
    public void Amounts_have_the_digits_of_their_currency()
    {
        XElement yen = Page(new JobPack(Estimate, new JobPackOptions { Cost = Cost("JPY") }).ToHtml());

        Assert.All(Column(Table(yen, "First cost"), 2), static amount => Assert.DoesNotContain(".", amount, StringComparison.Ordinal));
        Assert.Throws<InvalidOperationException>(static () => new JobPack(Estimate, new JobPackOptions { Cost = Cost("QQQ") }));
        Assert.Contains(".123 QQQ", Column(Table(Page(new JobPack(Estimate, new JobPackOptions { Cost = Cost("QQQ"), MinorDigits = 3 }).ToHtml()), "First cost"), 2)[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Workings_are_there_on_request_only()
    {
        string without = new JobPack(Estimate).ToHtml();
        string with = new JobPack(Estimate, new JobPackOptions { WithWorkings = true }).ToHtml();

        Assert.DoesNotContain("<details>", without, StringComparison.Ordinal);
        Assert.Equal(Estimate.Lines.Count, Page(with).Descendants("details").Count());
        Assert.Contains(Estimate.Lines[0].Life.ShowWorkings().Title, with, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_estimate_gives_the_same_bytes()
    {
        Assert.Equal(new JobPack(Estimate).ToHtml(), new JobPack(Samples.Estimate()).ToHtml());
        Assert.Equal(new JobPack(Estimate).ToMarkdown(), new JobPack(Samples.Estimate()).ToMarkdown());
        Assert.DoesNotContain('\r', new JobPack(Estimate).ToHtml());
    }

    [Fact]
    public void Every_row_of_a_table_in_Markdown_has_its_columns()
    {
        string[] lines = new JobPack(Estimate).ToMarkdown().Split('\n');
        int columns = 0;
        int rows = 0;
        foreach (string line in lines)
        {
            if (!line.StartsWith('|'))
            {
                columns = 0;
                continue;
            }

            int own = line.Replace("\\|", string.Empty, StringComparison.Ordinal).Count(static c => c == '|');
            columns = columns == 0 ? own : columns;
            Assert.Equal(columns, own);
            rows++;
        }

        Assert.True(rows > 20);
    }

    // They differ in the adhesive alone, which the text of a stock does not show.
    [Fact]
    public void Strips_that_read_alike_keep_their_own_names_in_the_cost()
    {
        StripStock Stock(double adhesiveUm) => new(
            new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(adhesiveUm))), Samples.Mm(100), Length.FromMeters(50));
        (StripStock thin, StripStock thick) = (Stock(25), Stock(40));
        SurveyLine Line(string tag, StripStock stock) => new(
            tag, new RingLay(new StraightPipe(Samples.Mm(114.3), Length.FromMeters(1)), stock, Samples.Mm(15)), ZincExposure.FromCategory(CorrosivityCategory.C3), Samples.FifteenYears);
        JobEstimate estimate = new Job("two strips", [Line("A", thin), Line("B", thick)], new TakeOffChoices(Samples.Mm(50), Length.FromMeters(1), Contingency.FromFraction(0))).Estimate();
        CostPrices prices = new([new RollPrice(thin, new Money(50, "EUR")), new RollPrice(thick, new Money(70, "EUR"))], new LabourRate(new Money(40, "EUR")), []);

        XElement cost = Table(Page(new JobPack(estimate, new JobPackOptions
        {
            Stocks = [new("thin", thin), new("thick", thick)],
            Cost = new CostEstimate(estimate.TakeOff, estimate.Covered, [], prices),
        }).ToHtml()), "First cost");

        Assert.Equal(thin.ToString(), thick.ToString());
        string[] named = [.. Column(cost, 1).Zip(Column(cost, 2), static (item, amount) => $"{item.Split(':')[0]} {amount}")];
        Assert.Contains("thin 50.00 EUR", named);
        Assert.Contains("thick 70.00 EUR", named);
    }

    // Notes, names of strips, waivers, day and cost come from the file; the job is worked out once.
    [Fact]
    public void What_a_file_says_beside_the_estimate_reaches_the_pack()
    {
        var stocks = new JobDocument(Estimate.Job).Stocks;
        NamedStock first = new("the wide one", stocks[0].Stock);
        CostPrices prices = new(
            [.. stocks.Select(static stock => new RollPrice(stock.Stock, new Money(50, "EUR")))],
            new LabourRate(new Money(40, "EUR")),
            [.. new JobDocument(Estimate.Job).WorkByLine().Select(static work => work.Kind).Distinct().Select(static kind => new LabourNorm(kind, LabourMeasure.Pieces, Duration.FromHours(0.5)))]);
        var day = new DateOnly(2031, 5, 4);
        Finding note = Estimate.Findings[0];
        var job = new JobDocument(Estimate.Job, prices, [new JobNote("keys at <the> gate"), new JobNote("scaffold from axis 4", Estimate.Lines[0].Line.Tag)], [first]);
        var document = new EstimateDocument(job, day, job.WorkByLine(), [new Waiver(note.Rule.Id, note.Subject, "seen", "A. Person", day)]);
        var pack = new JobPack(document.Estimate(), JobPackOptions.Of(document));
        XElement page = Page(pack.ToHtml());

        Assert.Same(document.Estimate(), pack.Estimate);
        Assert.Equal(["job", Estimate.Lines[0].Line.Tag], Column(Table(page, "What was remarked"), 0));
        Assert.Equal(["keys at <the> gate", "scaffold from axis 4"], Column(Table(page, "What was remarked"), 1));
        Assert.Single(Column(Table(page, "Strip by stock"), 0), static cell => cell.StartsWith("the wide one: ", StringComparison.Ordinal));
        Assert.Contains(page.Descendants("caption"), static caption => caption.Value.StartsWith("the wide one: ", StringComparison.Ordinal));
        XElement cost = Table(page, "First cost");
        Assert.Contains(Column(cost, 1), static cell => cell.StartsWith("the wide one: ", StringComparison.Ordinal));
        Assert.All(Column(cost, 1), static cell => Assert.DoesNotContain("ByHand", cell, StringComparison.Ordinal));
        Assert.Contains(Column(cost, 1), static cell => cell.Contains(", by hand, ", StringComparison.Ordinal));
        Assert.Equal(document.Findings().Waived, pack.Findings.Waived);
        Assert.NotEmpty(pack.Findings.Waived);
        Assert.Contains("Made on 2031-05-04", page.Value, StringComparison.Ordinal);
        Assert.Equal(job.Notes, JobPackOptions.Of(job).Notes);
        Assert.Empty(JobPackOptions.Of(job).Waivers);
    }

    // Rolls and work cost nothing here, a permit 1000.123.
    private static CostEstimate Cost(string currency) => new(
        Estimate.TakeOff,
        Estimate.Covered,
        [],
        new CostPrices(
            [.. Estimate.TakeOff.Stocks.Select(stock => new RollPrice(stock.Stock, new Money(0, currency)))],
            new LabourRate(new Money(0, currency)),
            [],
            [],
            [],
            null,
            [new CostItem("permit", new Money(1000.123m, currency), CostTiming.AtStart)]));

    private static XElement Page(string html) => XDocument.Parse(html.Replace("<!DOCTYPE html>", string.Empty, StringComparison.Ordinal)).Root!;

    private static XElement Table(XElement page, string caption) =>
        page.Descendants("table").Single(table => table.Element("caption")!.Value.StartsWith(caption, StringComparison.Ordinal));

    private static string[] Column(XElement table, int column) =>
        [.. table.Element("tbody")!.Elements("tr").Select(row => row.Elements().ElementAt(column).Value)];
}
