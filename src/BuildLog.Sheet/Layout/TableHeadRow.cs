using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Layout;

/// <summary>A table's head: labels standing on an accent rule. Repeated on a later page it is decoration.</summary>
internal static class TableHeadRow
{
    private const double PadY = 2.2;

    public static double HeightOf(IReadOnlyList<CellLines> heads) => heads.Max(head => head.Height) + 2 * PadY;

    public static void Draw(Pen pen, double x, double y, TablePlaces places, IReadOnlyList<CellLines> heads, bool repeated)
    {
        var bottom = y + HeightOf(heads);
        pen.Decoration(() => pen.Line(x, bottom, x + places.Width, bottom, Ink.AccentLine));
        pen.Tagged(new TagInfo(repeated ? Tag.Artifact : Tag.TR), () =>
        {
            foreach (var (place, head) in places.Columns.Zip(heads))
            {
                pen.Tagged(new TagInfo(repeated ? Tag.Artifact : Tag.TH, repeated ? HeadScope.None : HeadScope.Column), () =>
                    head.Draw(pen, x + place.TextLeft, bottom - PadY - head.Height, place.Align, place.TextWidth));
            }
        });
    }
}
