using System.Globalization;
using System.Net;
using System.Text;
using SacrificialTape.Provenance;
using SacrificialTape.Reports.Blocks;

namespace SacrificialTape.Reports.Writing;

/// <summary>Writes a page as HTML that needs nothing else and prints on A4. It is well-formed XML too, so that tools and tests can read it.</summary>
internal static class HtmlPage
{
    private const string Style =
        """
        :root { color-scheme: light; }
        body { font: 16px/1.45 system-ui, sans-serif; overflow-wrap: break-word; color: #111; background: #fff; margin: 0 auto; padding: 1.5rem; max-width: 84rem; }
        h1 { font-size: 1.7rem; margin: 0 0 .3rem; } h2 { font-size: 1.3rem; margin: 2rem 0 .5rem; border-bottom: 2px solid #111; }
        h3 { font-size: 1.05rem; margin: 1.4rem 0 .4rem; }
        nav ul { columns: 2; padding-left: 1.2rem; } a { color: #00457c; }
        .sheet { overflow-x: auto; margin: .6rem 0 1rem; }
        table { border-collapse: collapse; width: 100%; font-size: .88rem; }
        caption { text-align: left; font-weight: 600; padding: .2rem 0; }
        th, td { border: 1px solid #767676; padding: .2rem .45rem; text-align: left; vertical-align: top; }
        thead th { background: #e8e8e8; } tbody th { white-space: nowrap; } .n { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
        .caution { border: 3px solid #111; border-left-width: 1rem; padding: .4rem .9rem; margin: .8rem 0; }
        .caution p:first-child { font-weight: 700; margin: .2rem 0; }
        ol, ul { padding-left: 1.6rem; } li { margin: .25rem 0; } .hold { border-left: 4px solid #111; padding-left: .5rem; }
        figure { margin: .8rem 0; } figure svg { max-width: 100%; height: auto; } figcaption { font-size: .85rem; color: #333; }
        details { margin: .5rem 0; } pre { white-space: pre-wrap; font-size: .78rem; background: #f4f4f4; padding: .6rem; }
        @page { size: A4; margin: 14mm; }
        @media print {
          body { font-size: 10pt; padding: 0; max-width: none; } nav { display: none; } .sheet { overflow: visible; }
          .new-sheet { break-before: page; } h2, h3, caption { break-after: avoid; } tr, figure, .caution, li { break-inside: avoid; }
          thead { display: table-header-group; } table { font-size: 8pt; } th, td { padding: .1rem .25rem; }
          thead th, thead th.n, tbody th { white-space: normal; hyphens: auto; overflow-wrap: anywhere; }
        }
        """;

    internal static string Of(PackPage page)
    {
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n")
            .Append("<title>").Append(Text(page.Title)).Append("</title>\n<style>\n").Append(Style.ReplaceLineEndings("\n")).Append("\n</style>\n</head>\n<body>\n<header>\n<h1>").Append(Text(page.Title)).Append("</h1>\n</header>\n");
        Contents(page, html);
        html.Append("<main>\n");
        int heading = 0;
        foreach (PackBlock block in page.Blocks)
        {
            Write(block, html, ref heading);
        }

        return html.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static void Contents(PackPage page, StringBuilder html)
    {
        html.Append("<nav aria-label=\"Contents\">\n<ul>\n");
        int heading = 0;
        foreach (HeadingBlock block in page.Blocks.OfType<HeadingBlock>())
        {
            heading++;
            if (block.Level == 2)
            {
                html.Append(CultureInfo.InvariantCulture, $"<li><a href=\"#s{heading}\">{Text(block.Text)}</a></li>\n");
            }
        }

        html.Append("</ul>\n</nav>\n");
    }

    private static void Write(PackBlock block, StringBuilder html, ref int heading)
    {
        switch (block)
        {
            case HeadingBlock one:
                heading++;
                html.Append(CultureInfo.InvariantCulture, $"<h{one.Level} id=\"s{heading}\"{(one.NewSheet ? " class=\"new-sheet\"" : string.Empty)}>{Text(one.Text)}</h{one.Level}>\n");
                break;
            case ParagraphBlock one:
                html.Append("<p>").Append(Text(one.Text)).Append("</p>\n");
                break;
            case CautionBlock one:
                html.Append("<div class=\"caution\" role=\"note\">\n<p>").Append(Text(one.Title)).Append("</p>\n");
                foreach (string text in one.Texts)
                {
                    html.Append("<p>").Append(Text(text)).Append("</p>\n");
                }

                html.Append("</div>\n");
                break;
            case ListBlock one:
                List(one, html);
                break;
            case TableBlock one:
                Table(one, html);
                break;
            case PictureBlock one:
                html.Append("<figure>\n").Append(one.Picture.Svg).Append("\n<figcaption>").Append(Text(one.Picture.Description)).Append("</figcaption>\n</figure>\n");
                break;
            case WorkingsBlock one:
                html.Append("<details>\n<summary>").Append(Text(one.Title)).Append("</summary>\n");
                foreach (Workings workings in one.Workings)
                {
                    html.Append("<pre>").Append(Text(workings.ToString().ReplaceLineEndings("\n"))).Append("</pre>\n");
                }

                html.Append("</details>\n");
                break;
            default:
                throw new NotSupportedException($"{block.GetType().Name} has no HTML.");
        }
    }

    private static void List(ListBlock list, StringBuilder html)
    {
        string tag = list.Numbered ? "ol" : "ul";
        html.Append('<').Append(tag).Append(">\n");
        foreach (ListItem item in list.Items)
        {
            html.Append(item.Hold ? "<li class=\"hold\">" : "<li>");
            if (item.Name.Length > 0)
            {
                html.Append("<strong>").Append(item.Hold ? "HOLD POINT, " : string.Empty).Append(Text(item.Name)).Append(":</strong> ");
            }

            html.Append(Text(item.Text)).Append("</li>\n");
        }

        html.Append("</").Append(tag).Append(">\n");
    }

    private static void Table(TableBlock table, StringBuilder html)
    {
        html.Append("<div class=\"sheet\" tabindex=\"0\" role=\"region\" aria-label=\"").Append(Text(table.Caption)).Append("\">\n<table>\n<caption>").Append(Text(table.Caption)).Append("</caption>\n<thead>\n<tr>");
        foreach (TableColumn column in table.Columns)
        {
            html.Append("<th scope=\"col\"").Append(column.Number ? " class=\"n\"" : string.Empty).Append('>').Append(Text(column.Name)).Append("</th>");
        }

        html.Append("</tr>\n</thead>\n<tbody>\n");
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            html.Append("<tr>");
            for (int i = 0; i < row.Count; i++)
            {
                string tag = i == 0 ? "th" : "td";
                html.Append('<').Append(tag).Append(i == 0 ? " scope=\"row\"" : string.Empty).Append(table.Columns[i].Number ? " class=\"n\"" : string.Empty)
                    .Append('>').Append(Text(row[i])).Append("</").Append(tag).Append('>');
            }

            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n</div>\n");
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
