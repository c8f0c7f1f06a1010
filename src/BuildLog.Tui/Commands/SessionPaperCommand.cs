using System.CommandLine;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Papers;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Papers;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog paper session VEHICLE --date DATE --out FILE.pdf</c>: the record of one measurement session.</summary>
internal sealed class SessionPaperCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly PaperOptions paper = new();
    private readonly Option<string?> date = new("--date") { Description = Spoken("The day of the session (the latest one, if not said)."), HelpName = "DATE" };
    private readonly Option<string?> method = new("--method") { Description = Spoken("Which session of that day, where there are several: turn count, roll-out, teeth, weighbridge."), HelpName = "METHOD" };

    public SessionPaperCommand(Edge edge) : base("session", Spoken("The measurement record of one session: readings, result, what its uncertainty is made of."))
    {
        vehicle.AddTo(this);
        paper.AddTo(this);
        Options.Add(date);
        Options.Add(method);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var path = paper.File(parse);
        var size = paper.Paper(parse);
        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        var record = RecordOfSession.Content(bench, Session(edge, parse, bench), edge.Common.UnitsOf(parse), size, paper.Printed(edge, parse));
        return paper.Write(parse, path, (file, overwrite) => PaperWriter.WriteFile(record, file, overwrite));
    }

    private Session Session(Edge edge, ParseResult parse, VehicleOnBench bench)
    {
        if (bench.Sessions.Count == 0) throw new RefusedException("session", Spoken($"Nothing has been measured on {bench.Vehicle.Name} yet."), "");

        var day = parse.GetValue(date) is { } text ? Reading.Of(date.Name, text, typed => DayText.ReadLoosePast(typed, edge.Today)) : bench.Sessions.MaxBy(session => session.Date)!.Day;
        var ofDay = bench.Sessions.Where(session => (session.Day.Earliest, session.Day.Latest) == (day.Earliest, day.Latest)).ToList();
        if (ofDay.Count == 0)
            throw Reading.Wrong(
                date.Name,
                new Refusal("session", Spoken($"Nothing was measured on {bench.Vehicle.Name} that day; sessions are of {string.Join(", ", bench.Sessions.Select(session => Day(session)).Distinct())}."), Day(bench.Sessions[^1])));

        var wanted = parse.GetValue(method) is { } name ? ofDay.Where(session => Means(name, session)).ToList() : ofDay;
        return wanted is [var one]
            ? one
            : throw Reading.Wrong(
                method.Name,
                new Refusal("session", Spoken($"That day has these sessions: {string.Join("; ", ofDay.Select(session => Spoken($"{session.Method.Text} of {session.Subject}")))}. Name the method of one."), ofDay[0].Method.Text));
    }

    // By the word that is the same in all languages, or by the one that papers and pages call it.
    private static bool Means(string typed, Session session)
        => ((string[])[session.Method.Text, session.Method.ToString()]).Contains(typed.Trim(), StringComparer.OrdinalIgnoreCase);

    private static string Day(Session session) => DayText.Iso(session.Day);
}
