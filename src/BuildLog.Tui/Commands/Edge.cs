using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Commands;

/// <summary>Where commands meet the terminal: the answer out, every failure as one sentence and an exit code.</summary>
internal sealed class Edge(CommonOptions common, TextWriter output, TextWriter errors)
{
    private static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public CommonOptions Common => common;

    /// <summary>Gives a command its action.</summary>
    public void Answers(Command command, Func<ParseResult, Answer> answer) => command.SetAction(parse => Run(parse, answer));

    public int Run(ParseResult parse, Func<ParseResult, Answer> answer)
    {
        var json = parse.GetValue(common.Json);
        try
        {
            var said = answer(parse);
            if (json) output.WriteLine(said.Json.ToJsonString(Readable));
            else foreach (var line in said.Text) output.WriteLine(Terminal.Printable(line));
            return said.ExitCode;
        }
        catch (WrongInputException wrong)
        {
            return Refuse(wrong.Refusal, wrong.Option, json, ExitCodes.WrongInput);
        }
        catch (RefusedException refused)
        {
            return Refuse(refused.Refusal, null, json, ExitCodes.WrongInput);
        }
    }

    public int Refuse(Refusal refusal, string? option, bool json, int exitCode)
    {
        if (json)
        {
            var error = new JsonObject { ["code"] = refusal.Code, ["message"] = refusal.Message, ["option"] = option, ["example"] = refusal.Example };
            errors.WriteLine(new JsonObject { ["error"] = error }.ToJsonString(Readable));
        }
        else
        {
            errors.WriteLine(Terminal.Printable(option is null ? refusal.Sentence : $"{option}: {refusal.Sentence}"));
        }

        return exitCode;
    }
}
