using System.CommandLine;
using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Commands;

/// <summary>Keeps what a command measured as a session of a vehicle's fitted part: <c>--record VEHICLE</c>.</summary>
internal sealed class RecordOptions
{
    private readonly Option<string?> vehicle = new("--record") { Description = "Keep this as a session of the vehicle's fitted part.", HelpName = "VEHICLE" };
    private readonly Option<string?> day = new("--date") { Description = "The day of the session, with --record (today).", HelpName = "DATE" };
    private readonly Option<string?> helper = new("--helper") { Description = "Who helped, with --record.", HelpName = "NAME" };
    private readonly Option<string?> part = new("--part") { Description = "Which axle, with --record on a vehicle with two.", HelpName = "front|rear" };
    private readonly Position? place;

    // Null for an axle, of which there may be two.
    private RecordOptions(Position? place) => this.place = place;

    public static RecordOptions ForAxle() => new(null);

    public static RecordOptions ForGearbox() => new(Position.Transmission);

    public static RecordOptions ForTyres() => new(Position.Tyres);

    public void AddTo(Command command)
    {
        command.Options.Add(vehicle);
        command.Options.Add(day);
        command.Options.Add(helper);
        if (place is null) command.Options.Add(part);
    }

    public bool IsAsked(ParseResult parse) => parse.GetValue(vehicle) is not null;

    /// <summary>Stores the session, if that was asked for.</summary>
    /// <param name="edge">Opens the record.</param>
    /// <param name="parse">The command line.</param>
    /// <param name="make">The session of the fitted part, with its readings.</param>
    /// <returns>A line that says so, or none.</returns>
    public IEnumerable<string> Save<TComponent>(Edge edge, ParseResult parse, Func<TComponent, Vehicle, Session> make)
        where TComponent : Component
    {
        if (parse.GetValue(vehicle) is not { } name) return [];

        using var shop = edge.OpenShop(parse);
        var found = Reading.Blaming(vehicle.Name, () => shop.FindVehicle(name));
        var on = Day(edge, parse);
        if (shop.DrivelineOn(found, on).At(Where(parse)) is not TComponent component)
        {
            throw Reading.Wrong(vehicle.Name, new Refusal(
                "not-fitted", $"{found.Name} had no {Where(parse).InWords()} fitted on {DayText.InWords(on)}, so there is nothing to keep this with.", ""));
        }

        var session = make(component, found);
        session.Date = on;
        session.Helper = parse.GetValue(helper) ?? "";
        shop.Add(session);
        return [$"Kept as a session of {component.Name} on {found.Name}."];
    }

    private DateOnly Day(Edge edge, ParseResult parse)
        => parse.GetValue(day) is { } text ? Reading.Of(day.Name, text, typed => DayText.ReadPast(typed, edge.Today)) : edge.Today;

    private Position Where(ParseResult parse) => place ?? parse.GetValue(part) switch
    {
        null or "rear" => Position.RearAxle,
        "front" => Position.FrontAxle,
        var other => throw Reading.Wrong(part.Name, new Refusal("part", $"'{other}' is not front or rear.", "front")),
    };
}
