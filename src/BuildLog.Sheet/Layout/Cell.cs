using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Layout;

/// <summary>One text in a cell; a badge is drawn around its first line.</summary>
internal sealed record CellText(string Text, TextStyle Style, Badge? Badge = null);

/// <summary>A box around a word: filled, framed or both. The word is what counts.</summary>
internal sealed record Badge(Colour? Fill, Stroke Line);

/// <summary>The texts of one table cell, one below the other.</summary>
internal sealed record Cell(params IReadOnlyList<CellText> Texts);

/// <summary>A table column. Its width is a share of what the table has.</summary>
internal sealed record Column(string Head, double Share, Align Align = Align.Left);
