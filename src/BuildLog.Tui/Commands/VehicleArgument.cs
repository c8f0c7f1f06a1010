using System.CommandLine;
using BuildLog.Data;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Commands;

/// <summary>The vehicle a command is about, and the day: shared by everything that reads a vehicle.</summary>
internal sealed class VehicleArgument
{
    private readonly Argument<string> name = new("VEHICLE") { Description = Spoken("Its name, or any beginning of it that fits no other.") };
    private readonly Option<string?> on = new("--on") { Description = Spoken("What was fitted at the end of that day (today)."), HelpName = "DATE" };
    private readonly bool anyDay;

    private VehicleArgument(bool anyDay) => this.anyDay = anyDay;

    public static VehicleArgument Today() => new(anyDay: false);

    public static VehicleArgument OnAnyDay() => new(anyDay: true);

    public void AddTo(Command command)
    {
        command.Arguments.Add(name);
        if (anyDay) command.Options.Add(on);
    }

    public Vehicle Find(Shop shop, ParseResult parse) => shop.FindVehicle(parse.GetRequiredValue(name));

    public DateOnly Day(Edge edge, ParseResult parse)
        => anyDay && parse.GetValue(on) is { } text ? Reading.Of(on.Name, text, typed => DayText.Read(typed, edge.Today)) : edge.Today;

    public VehicleOnBench Read(Shop shop, Edge edge, ParseResult parse) => VehicleOnBench.Read(shop, Find(shop, parse), Day(edge, parse));
}
