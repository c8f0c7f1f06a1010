using System.CommandLine;
using BuildLog.Data.Hunting;
using BuildLog.Sheet.Papers;
using BuildLog.Tui.Papers;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog paper labels --out FILE.pdf</c>: a label with a short code for every part.</summary>
internal sealed class LabelsPaperCommand : Command
{
    private readonly PaperOptions paper = new();
    private readonly Option<bool> shelf = new("--shelf") { Description = Spoken("Only parts that are not fitted.") };

    public LabelsPaperCommand(Edge edge) : base("labels", Spoken("Labels to cut out, each with a short code that belongs to its part for good."))
    {
        paper.AddTo(this);
        Options.Add(shelf);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var path = paper.File(parse);
        var size = paper.Paper(parse);
        using var shop = edge.OpenShop(parse);
        var parts = shop.Parts().Where(place => place.Fitment is not null ? !parse.GetValue(shelf) : YardPart.IsAtHand(place.Component));
        var labels = LabelsOfShop.Content(parts, size, paper.Printed(edge, parse));
        return paper.Write(parse, path, (file, overwrite) => PaperWriter.WriteFile(labels, file, overwrite));
    }
}
