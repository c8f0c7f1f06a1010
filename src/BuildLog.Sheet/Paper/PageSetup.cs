using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Sheet.Paper;

/// <summary>A page's size and the margins around its body, in points.</summary>
/// <param name="Width">Of the page.</param>
/// <param name="Height">Of the page.</param>
/// <param name="Side">Left and right of the body.</param>
/// <param name="Top">Above it, with the running head.</param>
/// <param name="TopOfFirst">Above it on the first page, which has no running head.</param>
/// <param name="Foot">Below it, with the running foot.</param>
internal sealed record PageSetup(double Width, double Height, double Side = 46, double Top = 52, double TopOfFirst = 38, double Foot = 46)
{
    public static readonly PageSetup A4 = new(595.276, 841.89);                            // 210 × 297 mm
    public static readonly PageSetup Letter = new(612, 792);                               // 8½ × 11 in
    public static readonly PageSetup A6 = new(297.638, 419.528, 17, 36, 14, 28);           // 105 × 148 mm
    public static readonly PageSetup HalfLetter = new(396, 612, 26, 40, 22, 30);           // 5½ × 8½ in

    public Box Body => BodyFrom(Top);

    public Box FirstBody => BodyFrom(TopOfFirst);

    public static PageSetup Of(Content.Paper paper) => paper == Content.Paper.Letter ? Letter : A4;

    public static PageSetup Of(CardPaper paper) => paper == CardPaper.HalfLetter ? HalfLetter : A6;

    private Box BodyFrom(double top) => new(Side, top, Width - 2 * Side, Height - top - Foot);
}
