using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Paper;

/// <summary>A page's size and the margins around its body, in points.</summary>
internal sealed record PageSetup(double Width, double Height)
{
    private const double Side = 46;
    private const double Top = 52;
    private const double TopOfFirst = 38;                  // no running head there
    private const double Foot = 46;

    public static readonly PageSetup A4 = new(595.276, 841.89);     // 210 × 297 mm
    public static readonly PageSetup Letter = new(612, 792);        // 8½ × 11 in

    public Box Body => BodyFrom(Top);

    public Box FirstBody => BodyFrom(TopOfFirst);

    public static PageSetup Of(Content.Paper paper) => paper == Content.Paper.Letter ? Letter : A4;

    private Box BodyFrom(double top) => new(Side, top, Width - 2 * Side, Height - top - Foot);
}
