using BuildLog.Data.Days;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Notes;

/// <summary>Something noted down about anything the record keeps.</summary>
public sealed class Note : Dated
{
    public Note(Kept about) => (About, AboutUid) = (Matters.Of(about), about.Uid);

    private Note() { }

    public Matter About { get; private set; }

    public Guid AboutUid { get; private set; }

    public string Title
    {
        get;
        set => field = value.Trim();
    } = "";

    public string Body { get; set; } = "";

    public override void Check()
    {
        TextRules.CheckLine(Title, new Later("title of the note"), "pinion seal");
        TextRules.CheckText(Body, new Later("note"));
        TextRules.CheckDay(Date, new Later("day of the note"));
        if (Title.Length == 0 && Body.Trim().Length == 0) throw new RefusedException("note", Spoken("The note is empty."), "Pinion seal weeps since the drive to the coast.");
    }
}
