using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Papers.Orders;

/// <summary>The order sheet: a drawing with its measures for each piece, the facts of the whole shaft, and what only the maker or a caliper can fill in.</summary>
internal static class PropshaftOrderPaper
{
    private const double DrawingHeight = 96;

    private static IReadOnlyList<string> Asked =>
    [
        Spoken("Customer, telephone"),
        Spoken("How many; new, or altered from which shaft"),
        Spoken("Front flange or yoke: bolt circle, bolts, spigot"),
        Spoken("Rear flange or yoke: bolt circle, bolts, spigot"),
        Spoken("Joint size: cap diameter and width over the clips"),
        Spoken("Balanced to, at which speed"),
        Spoken("Wanted by, price agreed"),
    ];

    private static IReadOnlyList<string> Notes =>
    [
        Spoken("Behind ± stands how well it was measured, not how closely it has to be made."),
        Spoken("Lengths are from joint centre to joint centre with the vehicle at ride height, standing on its wheels."),
        Spoken("Please say before welding if a measure here cannot be right; the maker's practice and the local rules come before this sheet."),
    ];

    private static readonly TableLook Writing = new() { LeastRowHeight = 22, PadY = 6, WritingGap = 10, PadX = 10, KeepTogether = true, ShowsHead = false };

    public static DrawnDocument Draw(PropshaftOrder order) => PlainPaper.Draw(order, Spoken("propshaft order"),
    [
        new Paragraph(Missing.OrWords(order.Shaft), TypeScale.Strong) { SpaceBefore = 4 },
        .. order.Pieces.Count == 0 ? [new Section(Spoken("Pieces"), Missing.Paragraph)] : order.Pieces.Select(Piece),
        new Section(Spoken("The whole shaft"), FactTable.Of(order.Facts)),
        .. order.Against.Count == 0 ? (Block[])[] : [new Section(Spoken("Not as it should be: please advise"), new Bullets(order.Against, TypeScale.Body)) { KeepTogether = true }],
        new Section(Spoken("To be filled in"), new Table([new(Spoken("What"), 1.3), new(Spoken("Answer"), 2)], [.. Asked.Select(Row)], Writing)) { KeepTogether = true },
        new Section(Spoken("Please note"), new Bullets(Notes, TypeScale.Body)) { KeepTogether = true },
    ]);

    private static Section Piece(ShaftPieceOrder piece) => new(Missing.OrWords(piece.Name), new Picture(DrawingHeight, ShaftDrawing.Of(piece)), FactTable.Of(
    [
        new(Spoken("Joint centre to joint centre"), piece.Length),
        new(Spoken("Tube, outer diameter"), piece.TubeDiameter),
        new(Spoken("Tube, wall"), piece.Wall),
        new(Spoken("Yokes"), piece.Yokes),
        new(Spoken("Working angle, front joint"), piece.FrontAngle),
        new(Spoken("Working angle, rear joint"), piece.RearAngle),
    ]))
    {
        KeepTogether = true,
    };

    private static IReadOnlyList<Cell> Row(string asked) => [new(new CellText(asked, TypeScale.Body)), new([])];
}
