using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using SacrificialTape.Reports;

namespace SacrificialTape.Browser.Tests;

/// <summary>What only a real browser tells of the job pack and of pictures.</summary>
public sealed class PageTests(Browser browser) : IClassFixture<Browser>
{
    // 210 mm less margins of 15 mm, at 96 dots per inch; and a small telephone.
    private const int A4 = 680;
    private const int Telephone = 390;

    public static TheoryData<string> Names => [.. Pages.All.Keys];

    public static TheoryData<string> PictureNames => [.. Pages.Pictures.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task A_page_passes_the_accessibility_check_and_asks_for_nothing(string name)
    {
        (IPage page, List<string> complaints) = await browser.Open(Pages.All[name], 1200);
        AxeResult found = await page.RunAxe();
        Assert.NotEmpty(found.Passes);
        Assert.True(found.Violations.Length == 0, Said(found));
        Assert.Empty(complaints);
    }

    // The check itself must see what is wrong.
    [Fact]
    public async Task The_check_sees_a_picture_without_words_and_pale_text()
    {
        (IPage page, _) = await browser.Open(
            "<!doctype html><html lang=en><title>t</title><main><h1>h</h1><p style='color:#bbb;background:#fff'>pale</p><svg role=img width=10 height=10></svg></main>", 1200);
        AxeResult found = await page.RunAxe();
        Assert.Contains(found.Violations, static one => one.Id == "color-contrast");
        Assert.Contains(found.Violations, static one => one.Id == "svg-img-alt");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Nothing_runs_over_the_edge_on_paper_or_a_telephone(string name)
    {
        foreach ((int width, Media media) in new[] { (A4, Media.Print), (Telephone, Media.Screen) })
        {
            (IPage page, _) = await browser.Open(Pages.All[name], width);
            await page.EmulateMediaAsync(new() { Media = media });
            int wide = await page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            string[] over = await page.EvaluateAsync<string[]>(
                "width => [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > width + 1 && !e.parentElement.closest('.sheet') && !e.parentElement.closest('svg')).map(e => e.tagName + ' ' + e.textContent.slice(0, 60))", width);
            Assert.True(wide <= width, $"{media}: {wide} of {width} dots: {string.Join("; ", over.Take(5))}");
        }
    }

    // Also what a reader takes away from paper: pages, and more than blank ones.
    [Theory]
    [MemberData(nameof(Names))]
    public async Task It_prints(string name)
    {
        (IPage page, _) = await browser.Open(Pages.All[name], A4);
        byte[] pdf = await page.PdfAsync(new() { Format = "A4" });
        Assert.True(pdf.Length > 20_000, $"{pdf.Length} bytes");
        Assert.Equal("%PDF"u8.ToArray(), pdf[..4]);
    }

    // Colours that a grey printer makes alike would leave nothing to see.
    [Theory]
    [MemberData(nameof(PictureNames))]
    public async Task A_picture_has_words_and_can_be_told_apart_in_grey(string name)
    {
        Picture picture = Pages.Pictures[name];
        (IPage page, List<string> complaints) = await browser.Open($"<!doctype html><html lang=en><title>{name}</title><main><h1>{name}</h1>{picture.Svg}</main>", 900);
        AxeResult found = await page.RunAxe();
        Assert.True(found.Violations.Length == 0, Said(found));
        Assert.Empty(complaints);
        int greys = await page.EvaluateAsync<int>("""
            async () => {
              const svg = document.querySelector('svg');
              const box = svg.getBoundingClientRect();
              const image = new Image();
              image.src = 'data:image/svg+xml;utf8,' + encodeURIComponent(new XMLSerializer().serializeToString(svg));
              await image.decode();
              const canvas = document.createElement('canvas');
              canvas.width = box.width; canvas.height = box.height;
              const draw = canvas.getContext('2d');
              draw.fillStyle = '#fff';
              draw.fillRect(0, 0, canvas.width, canvas.height);
              draw.drawImage(image, 0, 0, canvas.width, canvas.height);
              const dots = draw.getImageData(0, 0, canvas.width, canvas.height).data;
              const seen = new Array(16).fill(0);
              for (let i = 0; i < dots.length; i += 4) seen[Math.floor((0.2126 * dots[i] + 0.7152 * dots[i + 1] + 0.0722 * dots[i + 2]) / 16)]++;
              return seen.filter(n => n > canvas.width * canvas.height / 2000).length;
            }
            """);
        Assert.True(greys >= 3, $"{greys} tones");
    }

    private static string Said(AxeResult found) => string.Join(
        "\n", found.Violations.Select(static one => $"{one.Id}: {one.Help}: {string.Join(" | ", one.Nodes.Take(4).Select(static node => node.Html[..Math.Min(160, node.Html.Length)]))}"));
}
