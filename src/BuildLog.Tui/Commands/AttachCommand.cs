using System.CommandLine;
using BuildLog.Data.Attachments;
using BuildLog.Data.Days;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Papers;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog attach FILE --to NAME</c>: copies a photo, receipt or paper beside the record and notes what it is about.</summary>
internal sealed class AttachCommand : Command
{
    private readonly Argument<string> file = new("FILE") { Description = Spoken("The file; it stays where it is, and its copy is kept beside the record.") };
    private readonly Option<string> to = new("--to") { Description = Spoken("A vehicle, part, job, donor, supplier or hunt: its name, or any beginning of it that fits no other."), HelpName = "NAME", Required = true };
    private readonly Option<string?> what = new("--what") { Description = Spoken("What it is, if its ending does not say."), HelpName = "photo|receipt|drawing|paper" };
    private readonly Option<string?> caption = new("--caption") { Description = Spoken("What it shows."), HelpName = "TEXT" };
    private readonly Option<string?> taken = new("--taken") { Description = Spoken("When it was taken or written, as far as known."), HelpName = "DATE" };

    public AttachCommand(Edge edge) : base("attach", Spoken("Keep a photo, receipt or paper with what it is about."))
    {
        Arguments.Add(file);
        Options.Add(to);
        Options.Add(what);
        Options.Add(caption);
        Options.Add(taken);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var path = Reading.Of(file.Name, parse.GetRequiredValue(file), CopyFile.Read);
        var kind = parse.GetValue(what) is { } word ? Reading.Of(what.Name, word, Kind) : (AttachmentKind?)null;
        var day = parse.Read(taken, LooseDayText.Read);
        using var shop = edge.OpenShop(parse);
        var about = Reading.Blaming(to.Name, () => shop.FindNamed(parse.GetRequiredValue(to)));
        var kept = Reading.Blaming(file.Name, () => shop.Attach(about, path, kind, parse.GetValue(caption) ?? "", day));
        return new(
            AttachmentsCommand.ToJson(kept),
            [Spoken($"Kept {kept.FileName} ({kept.What.InWords()}, {FileSize.InWords(kept.Length)}) with {about}.")]);
    }

    private static Parsed<AttachmentKind> Kind(string text)
        => Enum.TryParse<AttachmentKind>(text.Trim(), ignoreCase: true, out var kind) && Enum.IsDefined(kind) && text.Any(char.IsLetter)
            ? kind
            : new Refusal("what", Spoken($"{Shown.Quoted(text)} is no kind of file: photo, receipt, drawing or paper."), "photo");
}
