using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Search;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog find WORDS…</c>: everything ever typed that holds all of the words.</summary>
internal sealed class FindCommand : Command
{
    private const int Usual = 20;

    private readonly Argument<string[]> words = new("WORDS") { Description = Spoken("All of them have to be there; the last may be only begun."), Arity = ArgumentArity.OneOrMore };
    private readonly Option<string?> most = new("--most") { Description = Spoken("How many at most (20)."), HelpName = "NUMBER" };

    public FindCommand(Edge edge) : base("find", Spoken("Find what was ever typed: names, numbers, notes, reasons, readings."))
    {
        Arguments.Add(words);
        Options.Add(most);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        using var shop = edge.OpenShop(parse);
        var typed = string.Join(' ', parse.GetRequiredValue(words));
        var found = shop.Find(typed, Counted.Read(parse, most, Usual));
        return new(
            new JsonObject { ["found"] = Json.Array(found, ToJson) },
            found.Count == 0 ? [Spoken($"Nothing in the record holds '{typed}'.")] : [.. found.Select(ToText)]);
    }

    private static JsonObject ToJson(Found found) => new()
    {
        ["kind"] = found.Kind,
        ["title"] = found.Title,
        ["vehicle"] = found.Vehicle,
        ["part"] = found.Part,
        ["date"] = found.Day is { } day ? DayText.Iso(day) : null,
        ["dateAsTyped"] = found.DayAsTyped ?? (found.Day is { } known ? DayText.Iso(known) : null),
        ["excerpt"] = found.Excerpt,
        ["uid"] = found.RecordUid.ToString(),
    };

    private static string ToText(Found found)
    {
        var about = string.Join(", ", new[] { found.Part, found.Vehicle }.Where(name => name is not null && name != found.Title));
        return $"{NamedPart.InWords(Spoken(found.Kind), found.Title)}{(about.Length == 0 ? "" : $" ({about})")}: {found.Excerpt}".TrimEnd(':', ' ');
    }
}
