using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using BuildLog.Data.Changes;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog changes [VEHICLE]</c>: what was changed, by whom and when, the latest first.</summary>
internal sealed class ChangesCommand : Command
{
    private const int Usual = 20;

    private readonly Argument<string?> vehicle = new("VEHICLE") { Description = Spoken("Only changes that speak of it or of its parts."), Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> most = new("--most") { Description = Spoken("How many at most (20)."), HelpName = "NUMBER" };

    public ChangesCommand(Edge edge) : base("changes", Spoken("List the changes of the record, the latest first."))
    {
        Arguments.Add(vehicle);
        Options.Add(most);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        using var shop = edge.OpenShop(parse);
        var of = parse.GetValue(vehicle) is { } name ? shop.FindVehicle(name) : null;
        var changes = shop.Changes(of, most: Counted.Read(parse, most, Usual));
        var zone = edge.Clock.LocalTimeZone;
        return new(
            new JsonObject { ["changes"] = Json.Array(changes, ToJson) },
            changes.Count == 0 ? [Spoken("Nothing has been changed yet.")] : [.. changes.SelectMany(change => ToText(change, zone))]);
    }

    private static JsonObject ToJson(ChangeSet change) => new()
    {
        ["id"] = change.Id,
        ["when"] = change.When.UtcDateTime.ToString("O", CultureInfo.InvariantCulture),
        ["did"] = change.Label,
        ["machine"] = change.Machine,
        ["undoes"] = change.UndoesId,
        ["fields"] = Json.Array(change.Fields, field => new JsonObject { ["field"] = field.Field, ["before"] = field.Before, ["after"] = field.After }),
    };

    // Values only where there were two: what is new or gone is told by its name.
    private static IEnumerable<string> ToText(ChangeSet change, TimeZoneInfo zone)
    {
        var when = TimeZoneInfo.ConvertTime(change.When, zone).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        return change.Fields.Where(field => field is { Before: not null, After: not null })
            .Select(field => $"{"",18}{field.Field}: {field.Before} -> {field.After}")
            .Prepend($"{when}  {change.Label}");
    }
}
