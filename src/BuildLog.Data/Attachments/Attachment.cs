using BuildLog.Data.Days;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Attachments;

/// <summary>A photo, receipt or paper that belongs to something the record keeps; the file lies beside the record under its SHA-256.</summary>
public sealed class Attachment : Entered
{
    public Attachment(Kept about) => (About, AboutUid) = (Matters.Of(about), about.Uid);

    internal Attachment() { }

    public Matter About { get; internal set; }

    public AttachmentKind What { get; set; }

    public Guid AboutUid { get; internal set; }

    /// <summary>Of its bytes, 64 lower-case hexadecimal digits.</summary>
    public string Sha256 { get; set; } = "";

    /// <summary>What the file was called, without a folder.</summary>
    public string FileName { get; set; } = "";

    /// <summary>Such as <c>image/jpeg</c>.</summary>
    public string MediaType { get; set; } = "";

    /// <summary>In bytes.</summary>
    public long Length { get; set; }

    public string Caption { get; set; } = "";

    /// <summary>When the photo was taken or the paper written.</summary>
    public LooseDay? Taken { get; set; }

    public override void Check()
    {
        TextRules.CheckTitle(FileName, new Later("name of the file"), "pinion-before.jpg");
        TextRules.CheckLine(MediaType, new Later("kind of the file"), "image/jpeg");
        TextRules.CheckText(Caption, new Later("caption"));
        if (FileName.AsSpan().IndexOfAny('/', '\\') >= 0 || FileName is "." or "..")
            throw new RefusedException("file-name", Spoken($"'{FileName}' is no name of a file: leave its folder out."), "pinion-before.jpg");
        if (!ContentHash.Is(Sha256))
            throw new RefusedException("sha256", Spoken("The file's SHA-256 is not written in 64 lower-case hexadecimal digits."), "");
        if (Length < 0) throw new RefusedException("length", Spoken("A file has no length below zero."), "");
    }

    public override string ToString() => FileName;
}
