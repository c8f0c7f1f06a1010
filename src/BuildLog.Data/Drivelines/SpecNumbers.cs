using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Drivelines;

/// <summary>What is noted on a spec sheet, with how sure it is.</summary>
/// <remarks>A measured number is as sure as half its last digit, or as the ± typed with it; a rating or another stated one is meant as it stands.</remarks>
internal static class SpecNumbers
{
    public static IEnumerable<NumberKnown?> Of(Component component)
        => Of(component.Specs).Concat((component as PropshaftComponent)?.Pieces.SelectMany(OfPiece) ?? []);

    public static IEnumerable<NumberKnown?> Of(IEnumerable<SpecRow> rows)
        => rows.OrderBy(row => row.Spec).Select(row => Number(row.Spec.InWords(), row.Number, row.Spec.Line()));

    /// <summary>What a number of one piece is called; pieces are counted from the front.</summary>
    public static string OfPiece(int piece, SpecLine line) => FormattableString.Invariant($"{line.Words} of piece {piece + 1}");

    public static Known Known(Noted noted, SpecLine line, string name)
    {
        var typed = line.Read(noted.Text).OrRefuse();
        var meantAsItStands = line.IsNominal && noted.Source != Source.Measured;
        return new(line.SaysHowSure || typed.StandardUncertainty > 0 || meantAsItStands ? typed.ToMeasured(name) : ToItsLastDigit(typed, name), noted.Source, noted.Text);
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
        => noted is null ? null : PartNumbers.Strongest(name, line.Unit, (Known(noted, line, name), null));

    private static Measured ToItsLastDigit(Typed typed, string name)
    {
        var evidence = new Evidence(name, _ => $"measure the {name} more closely than it is noted ({typed.Text})");
        return Measured.From(typed.Value, Input.Rectangular($"{name}, last digit of {typed.Text}", QuotedLength.LastDigit(typed.Text, typed.Unit) / 2, evidence));
    }
}
