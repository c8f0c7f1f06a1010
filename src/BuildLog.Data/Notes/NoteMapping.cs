using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Notes;

internal static class NoteMapping
{
    public static void Map(ModelBuilder model)
    {
        var note = model.Entry<Note>("Notes");
        note.HasIndex(n => new { n.AboutUid, n.Date });
        note.Words(n => n.About).Dated().Rule("Text", """length(trim("Title")) + length(trim("Body")) > 0""");
    }
}
