using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using SacrificialTape.Documents;

namespace SacrificialTape.Docs.Tests;

/// <summary>
/// The kinds of a job file in words: which members there are stands in the published schema; what each measures, and which
/// surface a lay takes, is asked of the reader, by giving it something else in an example that holds every kind.
/// </summary>
internal sealed partial class JobFormat
{
    internal const string Example = "docs/examples/jobs/every-kind.json";

    private const string NoUnit = "1 xyz";

    private static readonly Dictionary<string, string> Sorts = new()
    {
        ["lay"] = "lay",
        ["first"] = "lay",
        ["second"] = "lay",
        ["everySpan"] = "lay",
        ["spans"] = "lay",
        ["surface"] = "surface",
        ["pipe"] = "surface",
        ["seams"] = "seam",
        ["laws"] = "lossLaw",
        ["spots"] = "stayClear",
        ["bands"] = "stayClear",
        ["choices"] = "choices",
        ["stocks"] = "stock",
    };

    private readonly JsonObject definitions = JsonNode.Parse(Repository.Read("docs/schemas/job-1.json"))!["$defs"]!.AsObject();
    private readonly JsonObject example = JsonNode.Parse(Repository.Read(Example))!.AsObject();
    private readonly Dictionary<JsonObject, JsonObject> shown = [];

    private readonly HashSet<JsonObject> inExample;

    internal JobFormat()
    {
        this.Show();
        this.inExample = [.. this.shown.Keys];

        // No lay of the library takes these, but the reader knows what their members measure.
        foreach (string surface in new[]
        {
            """{ "kind": "washer", "outsideDiameter": "50 mm", "insideDiameter": "20 mm", "count": 1 }""",
            """{ "kind": "circular hollow section", "outsideDiameter": "100 mm", "length": "1 m" }""",
        })
        {
            JsonNode line = this.example["lines"]!.AsArray().First(static one => (string?)one!["lay"]!["kind"] == "rings")!.DeepClone();
            line["lay"]!["surface"] = JsonNode.Parse(surface);
            this.example["lines"]!.AsArray().Add(line);
        }

        JsonObject column = Things(this.example).First(static one => one.Sort == "surface" && (string?)one.Thing["kind"] == "tapered column").Thing;
        column["basePlate"] = JsonNode.Parse("""{ "width": "300 mm", "depth": "300 mm", "thickness": "20 mm", "boltHoles": 4, "boltHoleDiameter": "22 mm" }""");
        this.Show();
    }

    /// <summary>Every way to state a thing of a sort that the example does not show.</summary>
    internal IEnumerable<string> NotShown(string sort) => this.Variants(sort).Where(variant => !this.inExample.Contains(variant))
        .Select(static variant => $"{variant["properties"]!["kind"]?["const"]}: {string.Join(", ", variant["required"]!.AsArray())}");

    /// <summary>A row for each kind of a sort: the kind, then its members, the ways to state it one after the other.</summary>
    internal IEnumerable<(string Kind, string Members)> Rows(string sort) => this.Variants(sort)
        .GroupBy(static variant => (string?)variant["properties"]!["kind"]?["const"] ?? string.Empty)
        .Select(same => (same.Key, string.Join("; or ", same.Select(variant => this.Members(variant, this.shown.GetValueOrDefault(variant))))));

    /// <summary>The kinds of surface that a kind of lay takes, as the reader says where it is given another.</summary>
    internal string SurfacesOf(string lay)
    {
        JsonObject thing = this.shown.First(pair => (string?)pair.Value["kind"] == lay && pair.Value["surface"] is not null).Value;
        var washer = new JsonObject { ["kind"] = "washer", ["outsideDiameter"] = "50 mm", ["insideDiameter"] = "20 mm", ["count"] = 1 };
        return this.Told(thing, "surface", washer, "Expected ");
    }

    private void Show()
    {
        foreach ((string sort, JsonObject thing) in Things(this.example))
        {
            if (this.Variants(sort).FirstOrDefault(variant => Fits(variant, thing)) is { } variant)
            {
                // The one that says most.
                this.shown[variant] = this.shown.TryGetValue(variant, out JsonObject? other) && other.Count >= thing.Count ? other : thing;
            }
        }
    }

    private static IEnumerable<(string Sort, JsonObject Thing)> Things(JsonNode? node, string name = "", string kind = "") => node switch
    {
        JsonObject thing =>
        [
            .. Sort(name, kind) is { } sort ? [(sort, thing)] : Array.Empty<(string, JsonObject)>(),
            .. thing.SelectMany(member => Things(member.Value, member.Key, (string?)thing["kind"] ?? string.Empty)),
        ],
        JsonArray list => list.SelectMany(item => Things(item, name, kind)),
        _ => [],
    };

    private static string? Sort(string name, string kind) => name == "openings" ? kind == "shell" ? "shellOpening" : "panelOpening" : Sorts.GetValueOrDefault(name);

    private static bool Fits(JsonObject variant, JsonObject thing)
    {
        JsonObject properties = variant["properties"]!.AsObject();
        return variant["required"]!.AsArray().All(name => thing.ContainsKey((string)name!))
            && thing.All(member => properties[member.Key] is JsonObject said
                && (said["const"] is not { } only || (string?)only == (string?)member.Value)
                && (said["enum"] is not JsonArray words || words.Any(word => (string?)word == (string?)member.Value)));
    }

    private IEnumerable<JsonObject> Variants(string sort) => this.definitions[sort]!["oneOf"] is JsonArray ways ? ways.Select(static way => way!.AsObject()) : [this.definitions[sort]!.AsObject()];

    private string Members(JsonObject variant, JsonObject? thing)
    {
        string[] required = [.. variant["required"]!.AsArray().Select(static name => (string)name!)];
        IEnumerable<string> members = variant["properties"]!.AsObject().Where(static member => member.Key is not ("kind" or "surface"))
            .Select(member => (member.Key, Text: $"`{member.Key}` {this.Member(member.Value!.AsObject(), thing, member.Key)}".TrimEnd()))
            .Select(member => required.Contains(member.Key) ? member.Text : $"({member.Text})");
        return string.Join(", ", members);
    }

    private string Member(JsonObject said, JsonObject? thing, string name) => ((string?)said["$ref"])?.Split('/')[^1] switch
    {
        "measure" => thing?.ContainsKey(name) == true ? QuantityWords.Of(this.Told(thing, name, NoUnit, "units that do: ")) : "measure",
        "count" => "whole number",
        "text" => "text",
        "clearKind" => Words(this.definitions["clearKind"]!["enum"]!.AsArray()),
        "surface" => "a surface of kind `pipe`",
        "lay" => "a lay",
        { } other => Spaced(other),
        null => this.Inline(said, thing, name),
    };

    private string Inline(JsonObject said, JsonObject? thing, string name)
    {
        if (said["enum"] is JsonArray words)
        {
            return Words(words);
        }

        if (said["const"] is { } only)
        {
            return $"`{only}`";
        }

        if ((string?)said["type"] == "boolean")
        {
            return "true or false";
        }

        if (said["items"] is JsonObject items)
        {
            return items["properties"] is null
                ? $"list of {(items["enum"] is JsonArray each ? Words(each) : Spaced(((string)items["$ref"]!).Split('/')[^1]))}"
                : $"list of {{ {this.Members(items, thing?[name]?[0]?.AsObject())} }}";
        }

        return $"{{ {this.Members(said, thing?[name]?.AsObject())} }}";
    }

    private static string Words(JsonArray words) => string.Join(" / ", words.Select(static word => $"`{word}`"));

    private static string Spaced(string name) => string.Concat(name.Select(static letter => char.IsUpper(letter) ? " " + char.ToLowerInvariant(letter) : letter.ToString()));

    // What the reader says where a member is something else: the words between a beginning and the full stop.
    private string Told(JsonObject thing, string member, JsonNode other, string beginning)
    {
        JsonNode was = thing[member]!;
        thing[member] = other.DeepClone();
        (string text, string path) = this.Alone(thing[member]!.GetPath());
        try
        {
            _ = JobDocument.Read(text);
        }
        catch (DocumentException refused)
        {
            string said = refused.Faults.First(fault => fault.Path == path && fault.Message.Contains(beginning, StringComparison.Ordinal)).Message;
            return said[(said.IndexOf(beginning, StringComparison.Ordinal) + beginning.Length)..].TrimEnd('.');
        }
        finally
        {
            thing[member] = was;
        }

        throw new InvalidOperationException($"{path}: the reader took {other}.");
    }

    // The example with one line only, that of a path, and the path in it: every line takes its time.
    private (string Text, string Path) Alone(string path)
    {
        JsonNode alone = this.example.DeepClone();
        _ = alone.AsObject().Remove("notes");
        Match line = Line().Match(path);
        JsonNode kept = this.example["lines"]![line.Success ? int.Parse(line.Groups["at"].Value, CultureInfo.InvariantCulture) : 0]!.DeepClone();
        alone["lines"] = new JsonArray(kept);
        return (alone.ToJsonString(), Line().Replace(path, "$$.lines[0]"));
    }

    [GeneratedRegex("""^\$\.lines\[(?<at>[0-9]+)\]""")]
    private static partial Regex Line();
}
