using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog paper time|costs VEHICLE --out FILE.pdf|FILE.csv</c>: hours or money, as a paper or for a spreadsheet.</summary>
internal sealed class AccountPaperCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly PaperOptions paper = new(PaperKind.Account);
    private readonly Option<string?> from = new("--from") { Description = Spoken("Only from that day on."), HelpName = "DATE" };
    private readonly Option<string?> to = new("--to") { Description = Spoken("Only to the end of that day."), HelpName = "DATE" };
    private readonly AccountOf account;

    private AccountPaperCommand(Edge edge, string name, string description, AccountOf account) : base(name, description)
    {
        this.account = account;
        vehicle.AddTo(this);
        paper.AddTo(this);
        Options.Add(from);
        Options.Add(to);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private delegate Account AccountOf(Vehicle vehicle, VehicleFolder folder, AccountSpan span, Paper paper, DateTimeOffset printed);

    public static AccountPaperCommand Time(Edge edge) => new(edge, "time", Spoken("The time sheet of a vehicle: work and hours, with lines to sign for them."), TimeOfVehicle.Content);

    public static AccountPaperCommand Costs(Edge edge) => new(edge, "costs", Spoken("The cost sheet of a vehicle: money with its receipts."), CostsOfVehicle.Content);

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var path = paper.File(parse);
        var size = paper.Paper(parse);
        var span = new AccountSpan(Day(edge, parse, from), Day(edge, parse, to));
        if (span.To < span.From) throw Reading.Wrong(to.Name, new Refusal("day", Spoken($"{DayText.InWords(span.To!.Value)} is before {DayText.InWords(span.From!.Value)}, where the account begins."), "today"));

        using var shop = edge.OpenShop(parse);
        var of = vehicle.Find(shop, parse);
        var made = account(of, VehicleFolder.Read(shop, of), span, size, paper.Printed(edge, parse));
        return SheetFile.IsCsv(path)
            ? paper.Write(parse, path, overwrite => Csv(made, path, overwrite))
            : paper.Write(parse, path, (file, overwrite) => PaperWriter.WriteFile(made.Sheet, file, overwrite));
    }

    private static Answer Csv(Account made, string path, bool overwrite)
    {
        WholeFile.At(path, overwrite, "kestrel-costs.csv").Write(AccountCsv.Text(made), AccountCsv.Encoding);
        return new(new JsonObject { ["file"] = path, ["rows"] = made.Rows.Count }, [Spoken($"Wrote {path}, rows: {made.Rows.Count}.")]);
    }

    private static DateOnly? Day(Edge edge, ParseResult parse, Option<string?> option)
        => parse.GetValue(option) is { } text ? Reading.Of(option.Name, text, typed => DayText.Read(typed, edge.Today)) : null;
}
