using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Options;
using BuildLog.Sheet.Papers;
using BuildLog.Tui.Options;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog paper compare VEHICLE --with CHANGES</c>: what is fitted beside one to three changes of it; on the terminal where no file is named.</summary>
internal sealed class ComparePaperCommand : Command
{
    private const int Columns = 80;

    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly PaperOptions paper = new();
    private readonly Option<string?> with = new("--with") { Description = Spoken($"One to three changes, or places in the list of buildlog options ({NamedChanges.Usual})."), HelpName = NamedChanges.All };
    private readonly Option<bool> map = new("--map") { Description = Spoken("Add the map of axle ratio against tyre circumference.") };

    private readonly Edge edge;

    public ComparePaperCommand(Edge edge) : base("compare", Spoken("What is fitted beside other parts, figure by figure; shown here where no file is named."))
    {
        this.edge = edge;
        vehicle.AddTo(this);
        Options.Add(with);
        Options.Add(map);
        paper.AddTo(this);
        edge.Answers(this, Answer);
    }

    private Answer Answer(ParseResult parse)
    {
        var path = paper.FileIfNamed(parse);
        var size = paper.Paper(parse);
        var units = edge.Common.UnitsOf(parse);
        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        var changes = parse.GetValue(with) ?? NamedChanges.Usual;
        var compared = Reading.Blaming(with.Name, () => NamedChanges.Beside(bench, changes, () => WaysOut.Of(shop, bench, new(), edge.Today)));
        var region = parse.GetValue(map) ? Reading.Blaming(map.Name, () => MapWords.Of(bench, units)) : null;

        var json = ToJson(compared, region);
        if (path is null) return new(json, [bench.Vehicle.Name, .. ComparisonWords.Table(compared, units, Columns), .. region is null ? [] : region.Lines.Prepend("")]);

        var page = ComparisonWords.Page(bench, compared, units, region, size, paper.Printed(edge, parse));
        json["file"] = path;
        return new(json, paper.Write(parse, path, (file, overwrite) => PaperWriter.WriteFile(page, file, overwrite)).Text);
    }

    private static JsonObject ToJson(OptionComparison compared, MapWords? region) => new()
    {
        ["names"] = Json.Array(compared.Names, name => name),
        ["figures"] = Json.Array(compared.Figures, figure => new JsonObject
        {
            ["what"] = figure.What,
            ["unit"] = figure.Unit.Symbol,
            ["values"] = Json.Array(figure.Values, value => value is null ? null : figure.Unit.FromBase(value.Value)),
            ["intervals95"] = Json.Array(figure.Values, value => value is null ? null : Json.Interval95(value, figure.Unit)),
        }),
        ["costs"] = Json.Array(compared.Costs, cost => cost),
        ["counts"] = Json.Array(compared.Counts, counts => new JsonObject { ["clash"] = counts.Clash, ["open"] = counts.Open, ["watch"] = counts.Watch, ["fits"] = counts.Fits }),
        ["map"] = Json.Map(region),
    };
}
