using Microsoft.Playwright;

namespace SacrificialTape.Browser.Tests;

/// <summary>The built docs site with no network but its own files: <c>dotnet docfx docs/docfx.json</c> makes it.</summary>
public sealed class SiteTests(Browser browser) : IClassFixture<Browser>
{
    private const string Root = "http://site.invalid/";

    [Theory]
    [InlineData("dew point margin", "site-conditions.html")]
    [InlineData("SpiralLay", "api/SacrificialTape.Wrapping.SpiralLay.html")]
    [InlineData("gores", "lays-heads-and-cones.html")]
    public async Task Search_finds_pages_without_a_network(string words, string page)
    {
        var complaints = new List<string>();
        await using IBrowserContext context = await browser.OpenContext();
        await context.RouteAsync("**/*", route => Answer(route, complaints));
        IPage site = await context.NewPageAsync();
        await site.GotoAsync(Root + "index.html");
        await site.WaitForFunctionAsync("() => window.docfx?.searchReady === true", null, new() { Timeout = 60_000 });
        await site.Locator("#search-query").PressSequentiallyAsync(words);
        await site.Locator("#search-results a").First.WaitForAsync();

        string[] found = await site.EvalOnSelectorAllAsync<string[]>("#search-results a", "links => links.map(link => link.href)");

        Assert.Contains(found, link => link.StartsWith(Root + page, StringComparison.Ordinal));
        Assert.Empty(complaints);
    }

    private static Task Answer(IRoute route, List<string> complaints)
    {
        string file = Path.Combine(Site(), new Uri(route.Request.Url).AbsolutePath.TrimStart('/'));
        if (route.Request.Url.StartsWith(Root, StringComparison.Ordinal) && File.Exists(file))
        {
            return route.FulfillAsync(new() { Path = file });
        }

        lock (complaints)
        {
            complaints.Add("asks for " + route.Request.Url);
        }

        return route.AbortAsync();
    }

    private static string Site()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string site = Path.Combine(at.FullName, "docs", "_site");
            if (File.Exists(Path.Combine(site, "index.html")))
            {
                return site;
            }
        }

        throw new InvalidOperationException("The docs site is not built: run 'dotnet docfx docs/docfx.json' first.");
    }
}
