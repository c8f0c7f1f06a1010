using System.Globalization;
using System.Text;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Tests.Golden;

/// <summary>Drawing operations as lines that a person can read in review. Positions are rounded to a tenth of a point.</summary>
internal static class OperationsAsText
{
    public static string Of(DrawnDocument document)
    {
        var text = new StringBuilder();
        foreach (var (i, page) in document.Pages.Index())
        {
            text.Append(CultureInfo.InvariantCulture, $"page {i + 1}, {N(page.Width)} x {N(page.Height)}\n");
            var depth = 1;
            foreach (var operation in page.Operations)
            {
                if (operation is EndTag) depth--;
                else text.Append(' ', 2 * depth).Append(LineOf(operation)).Append('\n');

                if (operation is BeginTag) depth++;
            }
        }

        return text.ToString();
    }

    private static string LineOf(Operation operation) => operation switch
    {
        DrawText t => $"{N(t.X)} {N(t.Baseline)} {t.Face.Name} {N(t.Size)} {t.Colour} \"{t.Text}\"",
        DrawBox b => $"box {N(b.Box.X)} {N(b.Box.Y)} {N(b.Box.Width)} x {N(b.Box.Height)} fill {b.Fill?.ToString() ?? "none"} line {Line(b.Line)}",
        DrawLine l => $"line {string.Join(" to ", l.Points.Select(p => $"{N(p.X)} {N(p.Y)}"))} {Line(l.Line)}",
        DrawPhoto p => $"photo {N(p.Box.X)} {N(p.Box.Y)} {N(p.Box.Width)} x {N(p.Box.Height)}, {p.Photo.Width} x {p.Photo.Height} pixels",
        BeginTag { Info: var tag } => $"{tag.Tag}{(tag.Scope == HeadScope.None ? "" : $" of {tag.Scope}")}{(tag.AlternativeText is { } words ? $" \"{words}\"" : "")}",
        Bookmark b => $"bookmark {b.Level} {N(b.Y)} \"{b.Title}\"",
        _ => throw new NotSupportedException(operation.GetType().Name),
    };

    private static string Line(Stroke? line) =>
        line is null ? "none" : $"{line.Colour} {N(line.Width)}{(line.Dash.Count == 0 ? "" : " dashed " + string.Join('-', line.Dash.Select(N)))}";

    private static string N(double value) => value.ToString("0.0#", CultureInfo.InvariantCulture);
}
