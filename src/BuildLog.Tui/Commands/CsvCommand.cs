using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using BuildLog.Data.Files;
using BuildLog.Data.Lists;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog csv parts|offers|costs</c>: a list for a spreadsheet, there and back.</summary>
internal sealed class CsvCommand : Command
{
    private readonly Argument<string> list = new("LIST") { Description = Spoken("parts, offers or costs."), HelpName = "parts|offers|costs" };
    private readonly Option<string?> vehicle = new("--vehicle") { Description = Spoken("Only this vehicle's."), HelpName = "VEHICLE" };
    private readonly Option<string?> output = new("--out") { Description = Spoken("Write to this file instead of the screen."), HelpName = "FILE.csv" };
    private readonly Option<string?> input = new("--in") { Description = Spoken("Add the rows of this file that are not in the record yet: all of them or none."), HelpName = "FILE.csv" };
    private readonly Option<bool> overwrite = new("--overwrite") { Description = Spoken("Replace a file of that name.") };

    public CsvCommand(Edge edge) : base("csv", Spoken("Write parts, offers or costs as CSV, or add rows from one."))
    {
        Arguments.Add(list);
        Options.Add(vehicle);
        Options.Add(output);
        Options.Add(input);
        Options.Add(overwrite);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var what = Reading.Of(list.Name, parse.GetValue(list)!, Which);
        using var shop = edge.OpenShop(parse);
        var only = parse.GetValue(vehicle) is { } name ? Reading.Blaming(vehicle.Name, () => shop.FindVehicle(name)) : null;
        if (parse.GetValue(input) is { } from)
        {
            using var reader = Open(Reading.Of(input.Name, from, CopyFile.Read));
            var added = Reading.Blaming(input.Name, () => shop.ReadList(what, reader, only));
            return new(new JsonObject { ["added"] = added }, [Spoken($"{added} {(added == 1 ? Spoken("row was") : Spoken("rows were"))} added; those that were here already were left alone.")]);
        }

        using var text = new StringWriter(CultureInfo.InvariantCulture);
        shop.WriteList(what, text, only);
        var csv = text.ToString();
        if (parse.GetValue(output) is not { } to) return new(new JsonObject { ["csv"] = csv }, [.. csv.Split("\r\n", StringSplitOptions.RemoveEmptyEntries)]);

        // The mark at the beginning tells a spreadsheet that it is UTF-8.
        var file = WholeFile.At(Reading.Of(output.Name, to, CopyFile.Read), parse.GetValue(overwrite), "costs.csv");
        file.Write(csv, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        return new(new JsonObject { ["file"] = file.Path }, [Spoken($"Written to {file.Path}.")]);
    }

    private static Parsed<ListOf> Which(string text)
        => Enum.TryParse<ListOf>(text.Trim(), ignoreCase: true, out var what) && Enum.IsDefined(what) ? what : new Refusal("list", Spoken($"{Shown.Quoted(text)} is no list: parts, offers or costs."), "costs");

    private static StreamReader Open(string path)
    {
        try
        {
            return new StreamReader(path, Encoding.UTF8);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new RecordException(Fault.ReadFailed, Spoken($"{path} cannot be read ({trouble.Message.TrimEnd('.')}). Name another file."));
        }
    }
}
