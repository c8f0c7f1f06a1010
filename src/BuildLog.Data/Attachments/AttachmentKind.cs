namespace BuildLog.Data.Attachments;

/// <summary>What an attached file is.</summary>
public enum AttachmentKind
{
    Paper,
    Photo,
    Receipt,
    Drawing,
}

public static class AttachmentWords
{
    public static string InWords(this AttachmentKind kind) => kind switch
    {
        AttachmentKind.Paper => Spoken("paper"),
        AttachmentKind.Photo => Spoken("photo"),
        AttachmentKind.Receipt => Spoken("receipt"),
        AttachmentKind.Drawing => Spoken("drawing"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of file."),
    };
}
