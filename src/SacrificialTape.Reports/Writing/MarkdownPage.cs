using System.Globalization;
using System.Text;
using SacrificialTape.Provenance;
using SacrificialTape.Reports.Blocks;

namespace SacrificialTape.Reports.Writing;

/// <summary>Writes a page as Markdown with tables.</summary>
internal static class MarkdownPage
{
    private const string Special = "\\`*_{}[]<>|#$~";

    internal static string Of(PackPage page)
    {
        var text = new StringBuilder();
        text.Append("# ").Append(Plain(page.Title)).Append("\n\n");
        foreach (PackBlock block in page.Blocks)
        {
            Write(block, text);
        }

        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static void Write(PackBlock block, StringBuilder text)
    {
        switch (block)
        {
            case HeadingBlock one:
                text.Append('#', one.Level).Append(' ').Append(Plain(one.Text)).Append("\n\n");
                break;
            case ParagraphBlock one:
                text.Append(Plain(one.Text)).Append("\n\n");
                break;
            case CautionBlock one:
                text.Append("> **").Append(Plain(one.Title)).Append("**\n");
                foreach (string line in one.Texts)
                {
                    text.Append(">\n> ").Append(Plain(line)).Append('\n');
                }

                text.Append('\n');
                break;
            case ListBlock one:
                for (int i = 0; i < one.Items.Count; i++)
                {
                    ListItem item = one.Items[i];
                    text.Append(one.Numbered ? string.Create(CultureInfo.InvariantCulture, $"{i + 1}. ") : "- ");
                    if (item.Name.Length > 0)
                    {
                        text.Append("**").Append(item.Hold ? "HOLD POINT, " : string.Empty).Append(Plain(item.Name)).Append(":** ");
                    }

                    text.Append(Plain(item.Text)).Append('\n');
                }

                text.Append('\n');
                break;
            case TableBlock one:
                Table(one, text);
                break;
            case PictureBlock one:
                text.Append('*').Append(Plain(one.Picture.Title)).Append(":* ").Append(Plain(one.Picture.Description)).Append("\n\n");
                break;
            case WorkingsBlock one:
                foreach (Workings workings in one.Workings)
                {
                    text.Append(workings.ToMarkdown().ReplaceLineEndings("\n").TrimEnd('\n')).Append("\n\n");
                }

                break;
            default:
                throw new NotSupportedException($"{block.GetType().Name} has no Markdown.");
        }
    }

    private static void Table(TableBlock table, StringBuilder text)
    {
        text.Append("**").Append(Plain(table.Caption)).Append("**\n\n|");
        foreach (TableColumn column in table.Columns)
        {
            text.Append(' ').Append(Plain(column.Name)).Append(" |");
        }

        text.Append("\n|");
        foreach (TableColumn column in table.Columns)
        {
            text.Append(column.Number ? "---:|" : "---|");
        }

        text.Append('\n');
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            text.Append('|');
            foreach (string cell in row)
            {
                text.Append(' ').Append(Plain(cell)).Append(" |");
            }

            text.Append('\n');
        }

        text.Append('\n');
    }

    // One line, and nothing in it that Markdown would take for its own.
    private static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (char c in text.ReplaceLineEndings(" "))
        {
            if (Special.Contains(c, StringComparison.Ordinal))
            {
                plain.Append('\\');
            }

            plain.Append(c);
        }

        return plain.ToString();
    }
}
