using BuildLog.Data.Rows;

namespace BuildLog.Data.Attachments;

/// <summary>Reads by hand what is attached to something.</summary>
internal static class AttachmentReader
{
    private const string About =
        """
        SELECT * FROM "Attachments" WHERE "AboutUid" = $about ORDER BY "Id"
        """;

    private const string Sql = """SELECT * FROM "Attachments" WHERE "Id" IN (SELECT value FROM json_each($ids))""";

    /// <summary>As they were added.</summary>
    public static IReadOnlyList<Attachment> Of(Snapshot record, Kept about) => record.Rows.Read(About, From, ("$about", about.Uid));

    public static IReadOnlyList<Attachment> Read(Snapshot record, IReadOnlyCollection<long> ids) => record.Rows.Read(Sql, From, ids);

    private static Attachment From(Row row) => row.Kept(new Attachment
    {
        About = row.Word<Matter>("About"),
        What = row.Word<AttachmentKind>("What"),
        AboutUid = row.Uid("AboutUid"),
        Sha256 = row.Text("Sha256"),
        FileName = row.Text("FileName"),
        MediaType = row.Text("MediaType"),
        Length = row.Key("Length"),
        Caption = row.Text("Caption"),
        Taken = row.LooseDay("Taken"),
    });
}
