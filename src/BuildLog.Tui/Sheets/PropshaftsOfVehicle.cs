using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Sheets;

/// <summary>The propshafts of a vehicle for paper, one row a piece.</summary>
internal static class PropshaftsOfVehicle
{
    public static IEnumerable<PropshaftRow> Of(VehicleOnBench bench)
        => FittedShaft.Of(bench.Driveline).SelectMany(shaft => shaft.Shaft.Pieces.Select((piece, k) => Row(bench, shaft, piece, k)));

    /// <summary>How two yokes stand to each other.</summary>
    public static string InWords(Yokes yokes) => yokes == Yokes.InLine ? Spoken("in line") : Spoken("a quarter turn apart");

    private static PropshaftRow Row(VehicleOnBench bench, FittedShaft shaft, ShaftPiece piece, int k)
    {
        var fastest = FastestTurn.Of(bench.Driveline, bench.Goals, shaft);
        return new()
        {
            Piece = SheetOfVehicle.Sentence(shaft.Position.InWords()) + (shaft.Shaft.Pieces.Count > 1 ? Spoken($", piece {k + 1}") : ""),
            Tube = Tube(piece),
            Length = piece.Length is { } length ? Rounded.WithInterval(length.Value, Units.Millimetre) : null,
            JointAngles = shaft.Shaft.Joints is { } joints ? Spoken($"{Angle(joints[k])} and {Angle(joints[k + 1])}") : null,
            Yokes = piece.Yokes is { } yokes ? InWords(yokes) : null,
            CriticalSpeed = piece.Tube is { } tube ? Rounded.WithInterval(CriticalSpeed.Alone(tube), Units.RevolutionPerMinute) : null,
            FastestTurn = fastest is null ? null : $"{Rounded.WithInterval(fastest.Speed, Units.RevolutionPerMinute)} {fastest.At}",
        };
    }

    private static string? Tube(ShaftPiece piece) => (piece.Outer, piece.Wall) switch
    {
        ({ } outer, { } wall) => Spoken($"{Millimetres(outer)} across, wall {Millimetres(wall)}"),
        ({ } outer, null) => Spoken($"{Millimetres(outer)} across"),
        (null, { } wall) => Spoken($"wall {Millimetres(wall)}"),
        _ => null,
    };

    private static string Millimetres(Known length) => Rounded.WithInterval(length.Value, Units.Millimetre);

    private static string Angle(JointAngle joint) => Rounded.WithInterval(joint.Compound, Units.Degree);
}
