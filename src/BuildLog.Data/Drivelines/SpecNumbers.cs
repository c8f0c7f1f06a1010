using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Drivelines;

/// <summary>What is noted on a spec sheet, with how sure it is; see <see cref="SpecLine.Known"/>.</summary>
internal static class SpecNumbers
{
    public static IEnumerable<NumberKnown> Of(Component component, IReadOnlyList<Session> sessions)
        => WithSessions(Noted(component.Specs).Concat((component as PropshaftComponent)?.Pieces.SelectMany(OfPiece) ?? []), sessions);

    /// <param name="rows">The spec sheet.</param>
    /// <param name="sessions">What was measured of it, the latest first.</param>
    public static IEnumerable<NumberKnown> Of(IEnumerable<SpecRow> rows, IReadOnlyList<Session> sessions) => WithSessions(Noted(rows), sessions);

    /// <summary>What a number of one piece is called; pieces are counted from the front.</summary>
    public static string OfPiece(int piece, SpecLine line) => Spoken($"{line.Words} of piece {piece + 1}");

    private static IEnumerable<NumberKnown?> Noted(IEnumerable<SpecRow> rows)
        => rows.OrderBy(row => row.Spec).Select(row => Number(row.Spec.InWords(), row.Number, row.Spec.Line()));

    // A session counts more than what somebody noted, the latest most of all.
    private static IEnumerable<NumberKnown> WithSessions(IEnumerable<NumberKnown?> noted, IReadOnlyList<Session> sessions)
    {
        var found = sessions.SelectMany(session => session.Finds().Select(number => (Session: session, Number: number))).ToLookup(each => each.Number.Number);
        var stated = noted.OfType<NumberKnown>().ToDictionary(number => number.Number);
        foreach (var number in stated.Keys.Union(found.Select(each => each.Key)))
        {
            var known = stated.GetValueOrDefault(number);
            yield return found.Contains(number)
                ? PartNumbers.Strongest(number, found[number].First().Number.Unit, [.. found[number].Select(each => (each.Number.Known, (Session?)each.Session)), .. known is null ? Array.Empty<(Known, Session?)>() : [(known.Used, null)]])!
                : known!;
        }
    }

    private static IEnumerable<NumberKnown?> OfPiece(StatedPiece piece, int k)
    {
        yield return Number(OfPiece(k, SpecSheet.ShaftOuter), piece.Outer, SpecSheet.ShaftOuter);
        yield return Number(OfPiece(k, SpecSheet.ShaftWall), piece.Wall, SpecSheet.ShaftWall);
        yield return Number(OfPiece(k, SpecSheet.ShaftLength), piece.Length, SpecSheet.ShaftLength);
        yield return Number(OfPiece(k, SpecSheet.ShaftSide), piece.Side, SpecSheet.ShaftSide);
        yield return Number(OfPiece(k, SpecSheet.ShaftPlan), piece.Plan, SpecSheet.ShaftPlan);
    }

    private static NumberKnown? Number(string name, Noted? noted, SpecLine line)
        => noted is null ? null : PartNumbers.Strongest(name, line.Unit, (line.Known(line.Read(noted.Text).OrRefuse(), noted.Source, name), null));
}
