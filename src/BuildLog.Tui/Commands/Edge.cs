using System.CommandLine;
using System.Runtime.CompilerServices;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using BuildLog.Data;
using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Shell;
using BuildLog.Tui.WhatNow;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Commands;

/// <summary>Where commands meet the terminal: the answer out, every failure as one sentence and an exit code.</summary>
/// <param name="common">The options every command has.</param>
/// <param name="output">Where answers go.</param>
/// <param name="errors">Where failures go; opened by the first of them.</param>
/// <param name="clock">Says which day it is.</param>
internal sealed class Edge(CommonOptions common, TextWriter output, Func<TextWriter> errors, TimeProvider clock) : IDisposable
{
    // Both fit 80 columns beside what else stands in their lines.
    internal static string DemoBanner => Spoken("Demo: invented shop, a copy that goes when you quit.");
    internal static string DemoWelcome => Spoken("Six builds, six stories: arrow keys choose, Tab reads on, F1 explains. Try it.");

    private static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // Nobody sits before a script; whoever does has been told, and can end it.
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);

    private string? demoCopy;

    public CommonOptions Common => common;

    /// <summary>The columns of the terminal that answers go to, on which charts can be drawn; null where they go to a file, another program, or a terminal of plain ASCII.</summary>
    public int? Columns
        => output == Console.Out && !Console.IsOutputRedirected && !Characters.AsciiIn(Environment.GetEnvironmentVariable) && Console.WindowWidth is > 0 and var columns ? columns : null;

    public TimeProvider Clock => clock;

    public DateOnly Today => clock.Today();

    /// <summary>Where the record lies that the command line names: the demo shop, a named file, or the usual one.</summary>
    public string RecordPath(ParseResult parse)
        => parse.GetValue(common.Demo) && parse.GetValue(common.Database) is not null
            ? throw Reading.Wrong(common.Database.Name, new Refusal("both", Spoken("--demo works on a private copy of its own: give one of the two."), ""))
            : parse.GetValue(common.Demo) ? demoCopy ??= DemoShop.CreateFreshCopy()
            : Path.GetFullPath(parse.GetValue(common.Database) ?? ShopFile.DefaultPath());

    /// <summary>Opens that record, and takes the day's backup if this is the first start of the day.</summary>
    public Shop OpenShop(ParseResult parse)
    {
        var shop = ShopFile.Open(RecordPath(parse), clock);
        shop.GoesOnWaiting = other =>
        {
            Warn($"{other}", parse.GetValue(common.Json));
            return other.Waited < LongestWait;
        };
        if (BackUpForTheDay(parse, shop) is { } trouble) Warn(trouble, parse.GetValue(common.Json));
        return shop;
    }

    /// <summary>Opens the workbench on the record.</summary>
    public int OpenWorkbench(ParseResult parse) => Guarded(json: false, () =>
    {
        common.CheckLanguage(parse);
        TerminalSession.Prepare();
        using var shop = ShopFile.Open(RecordPath(parse), clock);
        var pad = Scratchpad.Beside(shop.Path);
        var forNow = new ForNow();
        var acts = new WorkbenchActs(shop, clock, common.UnitsOf(parse), parse.GetValue(common.Demo) ? DemoBanner : null, pad, forNow);
        var firstPage = new ReadAhead<WhatNowRow>(acts.WhatNow);
        TerminalSession.Await();
        return Show(parse, shop, acts, pad, forNow, firstPage);
    });

    // A method that names what derives from the terminal library waits for it before its own first line: the record is read meanwhile.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private int Show(ParseResult parse, Shop shop, WorkbenchActs acts, Scratchpad pad, ForNow forNow, ReadAhead<WhatNowRow> firstPage) => WorkbenchStart.Run(
        acts,
        () => BenchPages.All(shop, clock, forNow),
        ErrorLog.Usual(),
        pad,
        () => parse.GetValue(common.Demo) ? DemoWelcome : shop.NotWritable ?? BackUpForTheDay(parse, shop),
        shop,
        firstPage);

    /// <summary>A demo copy is private and goes with the command that asked for it.</summary>
    public void Dispose()
    {
        if (demoCopy is not null && Path.GetDirectoryName(demoCopy) is { } folder) Directory.Delete(folder, recursive: true);
    }

    /// <summary>Gives a command its action.</summary>
    public void Answers(Command command, Func<ParseResult, Answer> answer) => command.SetAction(parse => Run(parse, answer));

    public int Run(ParseResult parse, Func<ParseResult, Answer> answer)
    {
        var json = parse.GetValue(common.Json);
        return Guarded(json, () =>
        {
            common.CheckLanguage(parse);
            _ = common.UnitsOf(parse); // wrong units are refused even where nothing is worded in them
            var said = answer(parse);
            if (json) output.WriteLine(said.Json.ToJsonString(Readable));
            else foreach (var line in said.Text) output.WriteLine(TextFit.Printable(line));
            return said.ExitCode;
        });
    }

    // Every way a command or the workbench can fail ends here, as one sentence and an exit code.
    private int Guarded(bool json, Func<int> act)
    {
        try
        {
            return act();
        }
        catch (WrongInputException wrong)
        {
            return Refuse(wrong.Refusal, wrong.Option, json, ExitCodes.WrongInput);
        }
        catch (RefusedException refused)
        {
            return Refuse(refused.Refusal, null, json, ExitCodes.WrongInput);
        }
        catch (OperationCanceledException)
        {
            return Refuse(new("ended", Spoken("Ended before there was an answer; nothing was changed."), ""), null, json, ExitCodes.WrongInput);
        }
        catch (RecordException record)
        {
            return Refuse(new("record", record.Message, ""), null, json, ExitCodes.RecordFailed);
        }
        catch (SheetWriteException sheet)
        {
            return Refuse(new("sheet", sheet.Message, sheet.AlreadyThere ? "--overwrite" : ""), "--out", json, ExitCodes.RecordFailed);
        }
#pragma warning disable CA1031 // The last line of defence: a person gets a sentence, the log gets the rest.
        catch (Exception error)
#pragma warning restore CA1031
        {
            var log = ErrorLog.Usual();
            var where = log.Write(error) ? Spoken($" The details are in {log.Path}.") : "";
            return Refuse(new("fault", Spoken($"Something went wrong that should not have: {error.Message}{where}"), ""), null, json, ExitCodes.RecordFailed);
        }
    }

    /// <summary>Says how far a long work is, beside the answer.</summary>
    public void SayMeanwhile(string sentence) => errors().WriteLine(TextFit.Printable(sentence));

    // A copy that cannot be made is no reason to stop working: it is a sentence, and an entry in the log.
    private string? BackUpForTheDay(ParseResult parse, Shop shop)
    {
        if (parse.GetValue(common.Demo)) return null;
        try
        {
            Backup.OfTheDay(shop.Path, Today);
            return null;
        }
        catch (RecordException trouble)
        {
            ErrorLog.Usual().Write(trouble);
            return Spoken($"Today's backup was not made. {trouble.Message}");
        }
    }

    private void Warn(string sentence, bool json)
        => errors().WriteLine(json ? new JsonObject { ["warning"] = new JsonObject { ["message"] = sentence } }.ToJsonString(Readable) : TextFit.Printable(sentence));

    public int Refuse(Refusal refusal, string? option, bool json, int exitCode)
    {
        if (json)
        {
            var error = new JsonObject { ["code"] = refusal.Code, ["message"] = refusal.Message, ["option"] = option, ["example"] = refusal.Example };
            errors().WriteLine(new JsonObject { ["error"] = error }.ToJsonString(Readable));
        }
        else
        {
            errors().WriteLine(TextFit.Printable(option is null ? refusal.Sentence : $"{option}: {refusal.Sentence}"));
        }

        return exitCode;
    }
}
