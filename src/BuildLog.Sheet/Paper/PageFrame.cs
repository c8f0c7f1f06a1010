using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;

namespace BuildLog.Sheet.Paper;

/// <summary>What stands around the body of every page: whose sheet, printed when, page x of y.</summary>
internal sealed record PageFrame(string Vehicle, string Shop, string Printed, string? Document = null)
{
    private const double RunningHeadRise = 22;
    private const double WidestShare = 0.45;

    public void Draw(Pen pen, PageSetup setup, int page, int pages)
    {
        var body = setup.Body;
        if (page > 1) DrawHead(pen, body);

        var rule = body.Bottom + setup.FootDrop;
        var baseline = rule + TypeScale.Running.BaselineDrop + 3;
        pen.Line(body.X, rule, body.Right, rule, Ink.HairLine);
        pen.Text(body.X, baseline, Shortened($"{Vehicle} · {Document ?? Spoken("build sheet")}", body), TypeScale.Running);
        pen.Text(body.X, baseline, Spoken($"Page {page} of {pages}"), TypeScale.Running, Align.Right, body.Width);
    }

    private void DrawHead(Pen pen, Box body)
    {
        var baseline = body.Y - RunningHeadRise + TypeScale.Running.BaselineDrop;
        pen.Text(body.X, baseline, Shortened(Shop, body), TypeScale.Running);
        pen.Text(body.X, baseline, Shortened(Printed, body), TypeScale.Running, Align.Right, body.Width);
        pen.Line(body.X, body.Y - 8, body.Right, body.Y - 8, Ink.AccentLine);
    }

    private static string Shortened(string text, Box body) =>
        LineBreaker.Shortened(text, TypeScale.Running, body.Width * WidestShare);
}
