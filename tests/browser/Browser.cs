using Microsoft.Playwright;

namespace SacrificialTape.Browser.Tests;

/// <summary>The Chromium of the system, started once for all tests. Nothing is fetched: it must be installed.</summary>
public sealed class Browser : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        string[] places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
        string found = Environment.GetEnvironmentVariable("CHROMIUM") ?? places.FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException("Install Chromium, or say where it is in the environment variable CHROMIUM.");
        this.playwright = await Playwright.CreateAsync();
        this.browser = await this.playwright.Chromium.LaunchAsync(new() { ExecutablePath = found, Args = ["--no-sandbox", "--disable-gpu"] });
    }

    public async ValueTask DisposeAsync()
    {
        if (this.browser is not null)
        {
            await this.browser.DisposeAsync();
        }

        this.playwright?.Dispose();
    }

    /// <summary>A place of its own for pages that a test serves itself.</summary>
    internal Task<IBrowserContext> OpenContext() => this.browser!.NewContextAsync(new() { ViewportSize = new() { Width = 1200, Height = 1000 } });

    /// <summary>A page without scripts of its own, in a window of a given width, with what it complained of.</summary>
    internal async Task<(IPage Page, List<string> Complaints)> Open(string html, int width)
    {
        IPage page = await this.browser!.NewPageAsync(new() { ViewportSize = new() { Width = width, Height = 1000 }, ColorScheme = ColorScheme.Light });
        var complaints = new List<string>();
        page.Console += (_, message) => complaints.Add(message.Text);
        page.PageError += (_, error) => complaints.Add(error);
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith("data:", StringComparison.Ordinal) && request.Url != "about:blank")
            {
                complaints.Add("asks for " + request.Url);
            }
        };
        await page.SetContentAsync(html);
        return (page, complaints);
    }
}
