using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Vehicles;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog vehicles</c>: the shop's vehicles. Reads by hand, so that it is quick.</summary>
internal sealed class VehiclesCommand : Command
{
    public VehiclesCommand(Edge edge) : base("vehicles", Spoken("List the shop's vehicles.")) => edge.Answers(this, parse => Answer(edge, parse));

    private static Answer Answer(Edge edge, ParseResult parse)
    {
        using var shop = edge.OpenShop(parse);
        var vehicles = shop.Vehicles();
        return new(() => ToJson(vehicles), vehicles.Count == 0
            ? [Spoken($"No vehicles yet in {shop.Path}. Start the workbench with `buildlog` and add one with n.")]
            : [.. vehicles.Select(vehicle => $"{vehicle.Name,-24}  {vehicle.State.InWords(),-12}  {vehicle.Owner}".TrimEnd())]);
    }

    private static JsonObject ToJson(IReadOnlyList<Vehicle> vehicles) => new()
    {
        ["vehicles"] = Json.Array(vehicles, vehicle => new JsonObject
        {
            ["name"] = vehicle.Name,
            ["description"] = vehicle.Description,
            ["state"] = vehicle.State.InWords(),
            ["owner"] = vehicle.Owner,
            ["chassisNumber"] = vehicle.ChassisNumber,
            ["registration"] = vehicle.Registration,
            ["uid"] = vehicle.Uid.ToString(),
        }),
    };
}
