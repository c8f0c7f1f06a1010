using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Commands;

/// <summary>Where a paper goes and how it is printed: shared by everything that ends on paper.</summary>
internal sealed class PaperOptions(PaperKind kind)
{
    private readonly Option<string?> output = new("--out") { Description = Spoken($"The {kind.Name} to write."), HelpName = kind.Form };
    private readonly Option<string?> paper = new("--paper") { Description = Spoken($"{kind.Papers[0].Word} (if not said) or {kind.Papers[1].Word}."), HelpName = string.Join('|', kind.Papers.Select(each => each.Word)) };
    private readonly Option<bool> reproducible = new("--reproducible") { Description = Spoken("The same record gives the same bytes: the day stands for the time of printing.") };
    private readonly Option<bool> overwrite = new("--overwrite") { Description = Spoken("Replace a file of that name.") };
    private readonly Option<bool> open = new("--open") { Description = Spoken("Show it in the system's viewer then.") };

    public PaperOptions() : this(PaperKind.Pdf) { }

    public void AddTo(Command command)
    {
        command.Options.Add(output);
        command.Options.Add(paper);
        command.Options.Add(reproducible);
        command.Options.Add(overwrite);
        command.Options.Add(open);
    }

    /// <summary>The file to write, checked before any work is done.</summary>
    public string File(ParseResult parse)
        => Reading.Of(output.Name, parse.GetValue(output) ?? throw Reading.Wrong(output.Name, new Refusal("missing", Spoken($"Name the {kind.Name} to write."), kind.Example)), kind.Read);

    /// <summary>The same where paper is only one way to have it; null where none is named.</summary>
    public string? FileIfNamed(ParseResult parse) => parse.GetValue(output) is null ? null : File(parse);

    public DateTimeOffset Printed(Edge edge, ParseResult parse)
        => parse.GetValue(reproducible) ? new DateTimeOffset(edge.Today, TimeOnly.MinValue, TimeSpan.Zero) : edge.Clock.GetLocalNow();

    public Paper Paper(ParseResult parse)
    {
        if (parse.GetValue(paper) is not { } text) return kind.Papers[0].Paper;

        return kind.Papers.FirstOrDefault(each => each.Word.Equals(text, StringComparison.OrdinalIgnoreCase))?.Paper
            ?? throw Reading.Wrong(paper.Name, new Refusal("paper", Spoken($"'{text}' is no paper here: {string.Join(Spoken(" or "), kind.Papers.Select(each => each.Word))}."), kind.Papers[1].Word));
    }

    /// <summary>Writes the paper, opens it if asked, and says both.</summary>
    /// <param name="parse">What was asked for.</param>
    /// <param name="path">Where it goes.</param>
    /// <param name="write">Writes to a path; the second argument allows a file there to be replaced.</param>
    public Answer Write(ParseResult parse, string path, Func<string, bool, SheetResult> write)
        => Write(parse, path, overwrite => Wrote(path, write(path, overwrite)));

    /// <summary>Writes something that is no PDF, opens it if asked, and says both.</summary>
    public Answer Write(ParseResult parse, string path, Func<bool, Answer> write)
    {
        var written = write(parse.GetValue(overwrite));
        return parse.GetValue(open) && SystemViewer.Open(path) is { } refused ? written with { Text = [.. written.Text, refused] } : written;
    }

    private static Answer Wrote(string path, SheetResult result)
    {
        var json = new JsonObject
        {
            ["file"] = path,
            ["pages"] = result.Pages,
            ["missingSigns"] = Json.Array(result.MissingSigns, missing => missing.CodePoint),
            ["skippedPhotos"] = Json.Array(result.SkippedPhotos, skipped => skipped),
        };
        return new(json, [SheetForm.InWords(path, result)]);
    }
}
