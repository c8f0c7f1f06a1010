using System.Text.Json.Nodes;
using BuildLog.Data.Attachments;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Commands;

/// <summary>The copy of a record that a command names, and what became of its attachments.</summary>
internal static class CopyFile
{
    public static Parsed<string> Read(string text)
        => text.Trim().Length == 0 ? new Refusal("missing", Spoken("Name the file."), "shop-backup.db") : TypedPath.Read(text, "shop-backup.db");

    public static JsonObject InJson(AttachmentsCopied attachments) => new()
    {
        ["folder"] = attachments.Folder,
        ["count"] = attachments.Count,
        ["copied"] = attachments.Copied,
        ["altered"] = Json.Array(attachments.Altered, sha256 => sha256),
    };

    public static IEnumerable<string> InWords(AttachmentsCopied attachments)
    {
        if (attachments.Folder is null)
        {
            yield return Spoken("There are no attachments.");
            yield break;
        }

        var there = attachments.Count - attachments.Copied - attachments.Altered.Count;
        yield return Spoken($"Attachments are in {attachments.Folder}: {attachments.Copied} copied, {there} were there already. Keep the two together.");
        if (attachments.Altered.Count > 0)
            yield return Spoken($"Left out, because they are no longer what was attached: {string.Join(", ", attachments.Altered)}");
    }
}
