using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Fonts;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Papers.Cards;

/// <summary>What a card is set in: as large as its paper lets all of it stand on one page.</summary>
internal sealed record CardType(double Size, double BoxHeight, double Gap)
{
    public TextStyle Title { get; } = new(SheetFonts.SemiBold, Size * 1.6, Ink.Text, 1.2);

    public TextStyle Body { get; } = new(SheetFonts.Regular, Size, Ink.Text, 1.22);

    public TextStyle Strong { get; } = new(SheetFonts.SemiBold, Size, Ink.Text, 1.22);

    /// <summary>Of the columns; no larger than what stands below it.</summary>
    public TextStyle Head { get; } = new(SheetFonts.SemiBold, Size * 0.93, Ink.Accent);

    public static CardType For(Content.Paper paper) => paper == Content.Paper.A6 ? new(6.5, 11.5, 3) : new(8.6, 17, 5);
}
