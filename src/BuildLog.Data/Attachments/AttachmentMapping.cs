using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Attachments;

internal static class AttachmentMapping
{
    public static void Map(ModelBuilder model)
    {
        var attachment = model.Entry<Attachment>("Attachments");
        attachment.HasIndex(a => a.AboutUid);
        attachment.HasIndex(a => a.Sha256);

        // What was attached before there were kinds, and comes back by undoing its removal, is a paper.
        attachment.Property(a => a.What).HasDefaultValue(AttachmentKind.Paper);
        attachment.Words(a => a.About).Words(a => a.What).Filled("FileName").LooseDay(a => a.Taken)
            .Rule("Sha256", "length(\"Sha256\") = 64 AND \"Sha256\" NOT GLOB '*[^0-9a-f]*'")
            .Rule("Length", "\"Length\" >= 0");
    }
}
