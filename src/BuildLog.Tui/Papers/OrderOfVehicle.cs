using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers.Orders;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Papers;

/// <summary>A vehicle's propshaft as an order to its maker.</summary>
public static class OrderOfVehicle
{
    /// <exception cref="RefusedException">No such shaft is fitted.</exception>
    public static PropshaftOrder Content(VehicleOnBench bench, bool front, Paper paper, DateTimeOffset printed)
    {
        var position = front ? Position.FrontPropshaft : Position.Propshaft;
        var shaft = FittedShaft.Of(bench.Driveline).FirstOrDefault(each => each.Position == position)
            ?? throw new RefusedException("propshaft", Spoken($"{bench.Vehicle.Name} has no {position.InWords()} yet; fit one with what is known of it, then order from it."), "");
        var fastest = FastestTurn.Of(bench.Driveline, bench.Goals, shaft);
        return new()
        {
            Id = bench.Fitted.At(position)!.Uid,
            Created = printed,
            Paper = paper,
            PrintedOn = Forms.DayText.InWords(printed),
            About = bench.Vehicle.Name,
            Shaft = $"{SheetOfVehicle.Sentence(position.InWords())}: {shaft.Shaft.Name}",
            Pieces = [.. shaft.Shaft.Pieces.Select((piece, k) => Piece(shaft, piece, k))],
            Against = [.. Against(bench, position)],
            Facts =
            [
                new(Spoken("Fastest it will turn"), fastest is null ? null : $"{Rounded.WithInterval(fastest.Speed, Units.RevolutionPerMinute)} {fastest.At}"),
                new(Spoken("Slip joint, stroke"), Millimetres(shaft.Shaft.Slip?.Stroke)),
                new(Spoken("Slip joint, out at ride height"), Millimetres(shaft.Shaft.Slip?.Out)),
                new(Spoken("Joints rated for"), shaft.Shaft.JointRating is { } rating ? Rounded.WithInterval(rating.Value, Units.NewtonMetre) : null),
            ],
        };
    }

    // A maker who is told makes it right; one who is not makes it as it was.
    private static IEnumerable<string> Against(VehicleOnBench bench, Position position)
        => bench.Findings.Where(finding => finding.Verdict is Verdict.Clash or Verdict.Watch && finding.Between.Contains(position))
            .Select(finding => string.Join(" ", [finding.Says, .. finding.Cures.Count == 0 ? [] : new[] { Spoken($"Cure: {string.Join(Spoken("; or "), finding.CuresIn(unit => unit))}.") }]));

    private static ShaftPieceOrder Piece(FittedShaft shaft, ShaftPiece piece, int k) => new(
        SheetOfVehicle.Sentence(shaft.Shaft.Pieces.Count == 1 ? Spoken("the shaft") : Spoken($"piece {k + 1} from the front")),
        Millimetres(piece.Length),
        Millimetres(piece.Outer),
        Millimetres(piece.Wall),
        piece.Yokes is { } yokes ? PropshaftsOfVehicle.InWords(yokes) : null,
        Angle(shaft, k),
        Angle(shaft, k + 1));

    private static string? Millimetres(Known? length) => length is null ? null : $"{Rounded.WithInterval(length.Value, Units.Millimetre)} ({length.Source.InWords()})";

    private static string? Angle(FittedShaft shaft, int joint)
        => shaft.Shaft.Joints is { } joints ? Rounded.WithInterval(joints[joint].Compound, Units.Degree) : null;
}
