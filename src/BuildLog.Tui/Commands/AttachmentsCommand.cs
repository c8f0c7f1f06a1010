using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog attachments VEHICLE</c>: the photos and papers of a vehicle, its jobs and its parts, and their files if asked for.</summary>
internal sealed class AttachmentsCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly Option<string?> save = new("--save") { Description = Spoken("Write the files to this folder; nothing there is replaced."), HelpName = "FOLDER" };

    public AttachmentsCommand(Edge edge) : base("attachments", Spoken("List what is attached to a vehicle, its jobs and its parts, or save the files."))
    {
        vehicle.AddTo(this);
        Options.Add(save);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    /// <summary>One of them for programs.</summary>
    public static JsonObject ToJson(Attachment attachment) => new()
    {
        ["name"] = attachment.FileName,
        ["what"] = attachment.What.InWords(),
        ["mediaType"] = attachment.MediaType,
        ["bytes"] = attachment.Length,
        ["sha256"] = attachment.Sha256,
        ["caption"] = attachment.Caption,
        ["taken"] = attachment.Taken?.Text,
    };

    private Answer Answer(Edge edge, ParseResult parse)
    {
        using var shop = edge.OpenShop(parse);
        var found = vehicle.Find(shop, parse);
        var folder = parse.GetValue(save) is { } to ? Reading.Of(save.Name, to, CopyFile.Read) : null;
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var listed = shop.AttachmentsWith(found).Select(place => Listed(shop, place, folder, taken)).ToList();
        return new(
            new JsonObject { ["vehicle"] = found.Name, ["attachments"] = Json.Array(listed, one => one.Json) },
            listed.Count == 0 ? [Spoken($"Nothing is attached to {found.Name}, its jobs or its parts.")] : [.. listed.Select(one => one.Text)]);
    }

    // A file that is gone is said and no reason to keep the others back.
    private static (JsonObject Json, string Text) Listed(Shop shop, AttachmentPlace place, string? folder, HashSet<string> taken)
    {
        var (attachment, about) = place;
        using var file = shop.OpenFile(attachment);
        var saved = folder is not null && file.IsSound ? Save(file.Content, folder, attachment.FileName, taken) : null;
        var json = ToJson(attachment);
        json["about"] = about;
        json["state"] = InWords(file.State);
        json["saved"] = saved;
        var caption = attachment.Caption.Length == 0 ? "" : $", {attachment.Caption}";
        var state = file.IsSound ? "" : $": the file is {InWords(file.State)}; see check-database";
        return (json, $"{attachment.FileName} ({attachment.What.InWords()}{caption}), {about}{state}{(saved is null ? "" : $" -> {saved}")}");
    }

    private static string Save(Stream content, string folder, string name, HashSet<string> taken)
    {
        var free = name;
        for (var k = 2; !taken.Add(free); k++) free = FormattableString.Invariant($"{Path.GetFileNameWithoutExtension(name)} ({k}){Path.GetExtension(name)}");

        var target = WholeFile.At(Path.Combine(folder, free), overwrite: false, free);
        target.Write(stream =>
        {
            content.CopyTo(stream);
            return true;
        });
        return target.Path;
    }

    private static string InWords(FileState state) => state switch
    {
        FileState.Sound => Spoken("sound"),
        FileState.Missing => Spoken("missing"),
        FileState.Altered => Spoken("altered"),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "No such state."),
    };
}
