using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Paper;

/// <summary>A page's size and the margins around its body, in points.</summary>
internal sealed record PageSetup(double Width, double Height)
{
    public static readonly PageSetup A4 = new(595.276, 841.89);     // 210 × 297 mm
    public static readonly PageSetup Letter = new(612, 792);        // 8½ × 11 in

    // Printers leave 4 mm, about 12 points, at the edges of a card too.
    public static readonly PageSetup A6 = new(297.638, 419.528) { Side = 17, Top = 36, TopOfFirst = 15, Foot = 29, FootDrop = 3 };             // 105 × 148 mm
    public static readonly PageSetup HalfLetter = new(396, 612) { Side = 26, Top = 40, TopOfFirst = 22, Foot = 34, FootDrop = 6 };             // 5½ × 8½ in

    public double Side { get; init; } = 46;

    public double Top { get; init; } = 52;

    /// <summary>Less, as there is no running head.</summary>
    public double TopOfFirst { get; init; } = 38;

    public double Foot { get; init; } = 46;

    /// <summary>From the body down to the rule of the running foot.</summary>
    public double FootDrop { get; init; } = 14;

    public Box Body => BodyFrom(Top);

    public Box FirstBody => BodyFrom(TopOfFirst);

    public static PageSetup Of(Content.Paper paper) => paper switch
    {
        Content.Paper.A4 => A4,
        Content.Paper.Letter => Letter,
        Content.Paper.A6 => A6,
        Content.Paper.HalfLetter => HalfLetter,
        _ => throw new ArgumentOutOfRangeException(nameof(paper), paper, "No such paper."),
    };

    private Box BodyFrom(double top) => new(Side, top, Width - 2 * Side, Height - top - Foot);
}
