using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Components;

/// <summary>A propshaft with the line it lies in.</summary>
public sealed class PropshaftComponent : Component
{
    /// <summary>One of which nothing is known yet, not even that it is of several pieces.</summary>
    public static PropshaftComponent Unmeasured() => new() { Pieces = [new StatedPiece()] };

    public override Later Kind => new Later("propshaft");

    public override IReadOnlyList<Position> Positions => [Position.Propshaft, Position.FrontPropshaft];

    /// <summary>From the front; more than one where a centre bearing carries the shaft.</summary>
    public IReadOnlyList<StatedPiece> Pieces
    {
        get => [.. Rows.OrderBy(row => row.Ordinal).Select(row => new StatedPiece(row.Outer, row.Wall, row.Length, row.Yokes, row.Side, row.Plan))];
        set
        {
            Rows.Clear();
            Rows.AddRange(value.Select((piece, k) => new PieceRow
            {
                Ordinal = k + 1,
                Outer = piece.Outer,
                Wall = piece.Wall,
                Length = piece.Length,
                Yokes = piece.Yokes,
                Side = piece.Side,
                Plan = piece.Plan,
            }));
        }
    }

    /// <summary>What the weakest joint may carry for long.</summary>
    [NotMapped]
    public Noted? JointRating { get => Specs.Of(Spec.JointRating); set => Specs.Put(Spec.JointRating, value); }

    /// <summary>Of the spline, from fully in to fully out.</summary>
    [NotMapped]
    public Noted? SlipStroke { get => Specs.Of(Spec.SlipStroke); set => Specs.Put(Spec.SlipStroke, value); }

    /// <summary>How far the spline stands out at ride height, from fully in.</summary>
    [NotMapped]
    public Noted? SlipOut { get => Specs.Of(Spec.SlipOut); set => Specs.Put(Spec.SlipOut, value); }

    /// <summary>The gearbox's output from the side, positive where the front end is higher.</summary>
    [NotMapped]
    public Noted? OutputSide { get => Specs.Of(Spec.OutputSide); set => Specs.Put(Spec.OutputSide, value); }

    /// <summary>The gearbox's output from above, positive where the front end is further to the right.</summary>
    [NotMapped]
    public Noted? OutputPlan { get => Specs.Of(Spec.OutputPlan); set => Specs.Put(Spec.OutputPlan, value); }

    [NotMapped]
    public Noted? PinionSide { get => Specs.Of(Spec.PinionSide); set => Specs.Put(Spec.PinionSide, value); }

    [NotMapped]
    public Noted? PinionPlan { get => Specs.Of(Spec.PinionPlan); set => Specs.Put(Spec.PinionPlan, value); }

    /// <summary>Flange or slip yoke's spline, in the shop's words.</summary>
    [NotMapped]
    public string? FrontEnd { get => Traits.Of(Trait.FrontEnd); set => Traits.Put(Trait.FrontEnd, value); }

    [NotMapped]
    public string? RearEnd { get => Traits.Of(Trait.RearEnd); set => Traits.Put(Trait.RearEnd, value); }

    internal List<PieceRow> Rows { get; } = [];

    public override void Check()
    {
        base.Check();
        if (Rows.Count is 0 or > 3) throw new RefusedException("pieces", Spoken($"A propshaft has one to three pieces, not {Rows.Count}."), "1");
        foreach (var piece in Pieces) piece.Check();
        if (SlipStroke is { } stroke && SlipOut is { } standsOut && PulledApart(stroke.Si, stroke.Text, standsOut.Si, standsOut.Text) is { } refusal) throw new RefusedException(refusal);
    }

    /// <summary>Why a spline cannot stand out so far; null where it can.</summary>
    /// <param name="stroke">From fully in to fully out, metres.</param>
    /// <param name="strokeTyped">The same as typed.</param>
    /// <param name="standsOut">From fully in, metres.</param>
    /// <param name="standsOutTyped">The same as typed.</param>
    public static Refusal? PulledApart(double stroke, string strokeTyped, double standsOut, string standsOutTyped) => standsOut > stroke
        ? new("slip", Spoken($"The spline cannot stand out further ({standsOutTyped}) than its stroke ({strokeTyped})."), "stroke 90 mm, out 35 mm")
        : null;
}

/// <summary>One piece of a propshaft; null where nobody has measured.</summary>
/// <param name="Outer">Outer diameter of the tube.</param>
/// <param name="Wall">Wall thickness.</param>
/// <param name="Length">Joint centre to joint centre, or to the centre bearing.</param>
/// <param name="Yokes">How its two yokes stand to each other.</param>
/// <param name="Side">Its angle from the side, positive where the front end is higher.</param>
/// <param name="Plan">Its angle from above, positive where the front end is further to the right.</param>
public sealed record StatedPiece(Noted? Outer = null, Noted? Wall = null, Noted? Length = null, Yokes? Yokes = null, Noted? Side = null, Noted? Plan = null)
{
    internal void Check()
    {
        Check(Outer, SpecSheet.ShaftOuter);
        Check(Wall, SpecSheet.ShaftWall);
        Check(Length, SpecSheet.ShaftLength);
        Check(Side, SpecSheet.ShaftSide);
        Check(Plan, SpecSheet.ShaftPlan);
        if (Outer is not null && Wall is not null && Length is not null) _ = new Tube(Outer.Si, Wall.Si, Length.Si);
    }

    private static void Check(Noted? number, SpecLine line)
    {
        if (number is not null) _ = line.Read(number.Text).OrRefuse();
    }
}

/// <summary>A piece as it is stored.</summary>
internal sealed class PieceRow
{
    public long Id { get; set; }

    public long PropshaftId { get; set; }

    public int Ordinal { get; set; }

    public Noted? Outer { get; set; }

    public Noted? Wall { get; set; }

    public Noted? Length { get; set; }

    public Yokes? Yokes { get; set; }

    public Noted? Side { get; set; }

    public Noted? Plan { get; set; }
}
