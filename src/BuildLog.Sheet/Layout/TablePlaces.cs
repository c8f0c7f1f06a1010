using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>Where a table's columns are, from the table's left edge.</summary>
internal sealed record TablePlaces(double Width, IReadOnlyList<ColumnPlace> Columns)
{
    public static TablePlaces Of(IReadOnlyList<Column> columns, double width, double padX)
    {
        var shares = columns.Sum(column => column.Share);
        var places = new List<ColumnPlace>();
        var x = 0.0;
        foreach (var column in columns)
        {
            var wide = width * column.Share / shares;
            // The outer columns line up with the page's edges; between two columns there are two pads.
            var (left, right) = (places.Count == 0 ? 0 : padX, places.Count == columns.Count - 1 ? 0 : padX);
            places.Add(new ColumnPlace(x, x + wide, x + left, wide - left - right, column.Align));
            x += wide;
        }

        return new TablePlaces(width, places);
    }
}

internal sealed record ColumnPlace(double Left, double Right, double TextLeft, double TextWidth, Align Align);
