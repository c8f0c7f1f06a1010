using System.CommandLine;
using BuildLog.Sheet.Papers;
using BuildLog.Tui.Papers;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog paper order VEHICLE --out FILE.pdf</c>: the propshaft, for its maker.</summary>
internal sealed class OrderPaperCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly PaperOptions paper = new();
    private readonly Option<bool> front = new("--front") { Description = Spoken("The propshaft to the front axle.") };

    public OrderPaperCommand(Edge edge) : base("order", Spoken("A propshaft order with its drawing and measures."))
    {
        vehicle.AddTo(this);
        paper.AddTo(this);
        Options.Add(front);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var path = paper.File(parse);
        var size = paper.Paper(parse);
        using var shop = edge.OpenShop(parse);
        var order = OrderOfVehicle.Content(vehicle.Read(shop, edge, parse), parse.GetValue(front), size, paper.Printed(edge, parse));
        return paper.Write(parse, path, (file, overwrite) => PaperWriter.WriteFile(order, file, overwrite));
    }
}
