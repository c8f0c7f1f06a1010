using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog check-database</c>: whether the record is whole. Ends with 3 where it is not.</summary>
internal sealed class CheckDatabaseCommand : Command
{
    public CheckDatabaseCommand(Edge edge) : base("check-database", Spoken("Check whether the record and its attachments are whole."))
        => edge.Answers(this, parse => Answer(RecordCheck.Of(edge.RecordPath(parse))));

    private static Answer Answer(RecordHealth health)
    {
        var troubles = health.Troubles().ToList();
        var json = new JsonObject
        {
            ["file"] = health.File,
            ["ok"] = health.IsSound,
            ["schemaIsCurrent"] = health.IsCurrent,
            ["damage"] = Texts(health.Damage),
            ["brokenReferences"] = Texts(health.BrokenReferences),
            ["missingTriggers"] = Texts(health.MissingTriggers),
            ["looseTables"] = Texts(health.LooseTables),
            ["attachments"] = new JsonObject
            {
                ["named"] = health.Attachments.Named,
                ["missing"] = Texts(health.Attachments.Missing),
                ["altered"] = Texts(health.Attachments.Altered),
                ["unnamed"] = Texts(health.Attachments.Unnamed),
            },
            ["troubles"] = Texts(troubles),
        };
        return new(json, [.. InWords(health, troubles)], health.IsSound ? ExitCodes.Done : ExitCodes.RecordFailed);
    }

    private static IEnumerable<string> InWords(RecordHealth health, List<string> troubles)
    {
        if (troubles.Count == 0) yield return Spoken($"{health.File} is whole: no damage, every reference leads somewhere, its guards are in place, {Attachments(health.Attachments)}.");
        else yield return Spoken($"{health.File} is not whole.");

        foreach (var trouble in troubles) yield return trouble;
        if (!health.IsCurrent) yield return Spoken("It is of an earlier version of BuildLog and is brought up to date, after a backup, when it is opened.");
        if (health.Attachments.Unnamed.Count > 0) yield return Spoken($"Files beside it that belong to no entry: {health.Attachments.Unnamed.Count}. They do no harm.");
    }

    private static string Attachments(AttachmentsChecked attachments)
        => attachments.Named switch
        {
            0 => Spoken("and there are no attachments"),
            1 => Spoken("and its attachment is as it was attached"),
            var count => Spoken($"and its {count} attachments are as they were attached"),
        };

    private static JsonArray Texts(IEnumerable<string> texts) => Json.Array(texts, text => text);
}
