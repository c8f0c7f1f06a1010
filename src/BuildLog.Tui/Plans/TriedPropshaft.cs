using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Plans;

/// <summary>Another tube, other angles, another slip joint: <c>tube 89 mm; wall 2.1 mm; angles 3 5 3; above 0 2 0</c>.</summary>
/// <remarks>Angles are from the side, those behind <c>above</c> seen from above. Tube, wall and length are those of the only piece, or of the rear one; <c>front</c> before them means the piece before the centre bearing.</remarks>
internal static class TriedPropshaft
{
    private const string Example = "tube 89 mm; wall 2.1 mm; length 1.30 m; angles 3 5 3";
    private const string Front = "front ";
    private const string FromTheSide = "angles";
    private const string FromAbove = "above";

    private static readonly char[] BetweenAngles = [' ', '/'];

    private static readonly IReadOnlyList<string> OfOnePiece = ["tube", "wall", "length"];

    private static readonly IReadOnlyList<string> OfTheShaft = [FromTheSide, FromAbove, "joint", "stroke", "out"];

    public static Parsed<Propshaft> Read(string text, string name, Propshaft? fitted)
    {
        var shaft = fitted ?? new Propshaft(name, new ShaftPiece());
        IReadOnlyList<string> words = [.. shaft.Pieces.Count > 1 ? OfOnePiece.Select(word => Front + word) : [], .. OfOnePiece, .. OfTheShaft];
        return NamedNumbers.Read(text, Spoken("the propshaft"), words, Example).Then(numbers => Parsed.From(() => With(shaft, name, numbers)));
    }

    private static Propshaft With(Propshaft shaft, string name, IReadOnlyDictionary<string, string> numbers)
    {
        var pieces = shaft.Pieces.ToList();
        if (pieces.Count > 1) pieces[0] = Piece(pieces[0], Front, numbers);
        pieces[^1] = Piece(pieces[^1], "", numbers);
        return new(name, pieces)
        {
            Line = Line(shaft, Angles(shaft, numbers, FromTheSide, SpecSheet.ShaftSide), Angles(shaft, numbers, FromAbove, SpecSheet.ShaftPlan)),
            JointRating = Known(numbers, "joint", Spec.JointRating.Line()) ?? shaft.JointRating,
            Slip = Slip(shaft.Slip, Known(numbers, "stroke", Spec.SlipStroke.Line()), Known(numbers, "out", Spec.SlipOut.Line())),
            FrontEnd = shaft.FrontEnd,
            RearEnd = shaft.RearEnd,
        };
    }

    private static ShaftPiece Piece(ShaftPiece piece, string which, IReadOnlyDictionary<string, string> numbers) => new(
        Known(numbers, which + "tube", SpecSheet.ShaftOuter) ?? piece.Outer,
        Known(numbers, which + "wall", SpecSheet.ShaftWall) ?? piece.Wall,
        Known(numbers, which + "length", SpecSheet.ShaftLength) ?? piece.Length,
        piece.Yokes);

    private static SlipJoint? Slip(SlipJoint? fitted, Known? stroke, Known? stands)
        => stroke is null && stands is null ? fitted : new(stroke ?? fitted?.Stroke, stands ?? fitted?.Out);

    // What is not told stays.
    private static IReadOnlyList<Inclination>? Line(Propshaft shaft, IReadOnlyList<Known>? side, IReadOnlyList<Known>? plan)
        => side is null && plan is null ? shaft.Line
            : [.. Enumerable.Range(0, Members(shaft)).Select(k => new Inclination(side?[k] ?? shaft.Line?[k].Side, plan?[k] ?? shaft.Line?[k].Plan))];

    // The gearbox's output first and the pinion last.
    private static List<Known>? Angles(Propshaft shaft, IReadOnlyDictionary<string, string> numbers, string word, SpecLine line)
    {
        if (!numbers.TryGetValue(word, out var text)) return null;

        var angles = text.Split(BetweenAngles, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Where(angle => angle is not ("deg" or "°")).ToList();
        return angles.Count == Members(shaft)
            ? [.. angles.Select(line.Told)]
            : throw new RefusedException(
                "angles",
                Spoken($"{Shown.Quoted(text)}: a shaft of {shaft.Pieces.Count} has {Members(shaft)} angles, the gearbox's output first and the pinion last, a blank between."),
                Example);
    }

    private static int Members(Propshaft shaft) => shaft.Pieces.Count + 2;

    private static Known? Known(IReadOnlyDictionary<string, string> numbers, string word, SpecLine line)
        => numbers.TryGetValue(word, out var text) ? line.Told(text) : null;
}
