using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Options;

/// <summary>The values of one part that meet every goal and limit at once, the other parts staying as they are.</summary>
/// <param name="Position">The part.</param>
/// <param name="Quantity">What of it, such as <c>axle ratio</c>.</param>
/// <param name="Unit">How to show it; the windows are in its base unit.</param>
/// <param name="Window">With the other parts at their best values; empty where two wishes exclude each other.</param>
/// <param name="SureWindow">Narrowed so that the verdict would be fits with today's uncertainties; null if there is none.</param>
/// <param name="OpenedBy">The measurement that would open a sure window where there is none.</param>
public sealed record WindowOfPart(Position Position, string Quantity, Unit Unit, Window Window, Window? SureWindow, string? OpenedBy)
{
    /// <summary>It is of the gear that the vehicle cruises in, whatever that gear is called.</summary>
    public bool IsOfTopGear { get; init; }

    /// <summary>Who demands the lower edge; null where that side is open.</summary>
    public Demand? Lowest { get; init; }

    /// <summary>Who demands the upper edge; null where that side is open.</summary>
    public Demand? Highest { get; init; }

    /// <summary>Between which values such a part is made.</summary>
    public Window Made { get; init; } = new(double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Whether such a part is made at all; a window may lie beyond where another part is what is wrong.</summary>
    public bool IsMade => Window.IsEmpty || Made.Overlaps(Window);

    /// <summary><c>, in practice 2.567 m or less</c>, where it reaches beyond what is made; else empty.</summary>
    /// <param name="unit">The unit to say it in, of the same kind.</param>
    public string InPractice(Unit unit) => PartsMade.InPractice(Window, Made, unit);

    /// <summary>Which two wishes exclude each other, and by how much; null where they do not.</summary>
    public string? Contradiction => Window.IsEmpty && Lowest is not null && Highest is not null
        ? Spoken($"{Lowest.InWords} wants {Quantity} {InFigures(Window.Low)} or more, {Highest.InWords} wants {InFigures(Window.High)} or less: they exclude each other by {InFigures(Window.Low - Window.High)}.")
        : null;

    // As many places as show by how much, so that the two edges lie apart by just that.
    private string InFigures(double value)
    {
        var gap = Unit.FromBase(Window.Low - Window.High);
        var places = Math.Clamp(1 - (int)Math.Floor(Math.Log10(gap)), Window.PlacesIn(Unit), 6);
        return Rounded.WithUnit(Rounded.Fixed(Unit.FromBase(value), places), Unit);
    }

    /// <summary>It is of this number.</summary>
    internal bool IsAbout(PartWindow window) => (window.Position, window.Quantity) == (Position, Quantity);

    /// <summary>The finding sets one of its edges.</summary>
    internal bool IsDemandedBy(Finding finding) => Lowest?.Check == finding.Check || Highest?.Check == finding.Check;

    /// <summary>The same where no more than this will do either.</summary>
    /// <param name="limits">What else limits it, in base units.</param>
    /// <param name="who">Who says so, in words.</param>
    public WindowOfPart Within(Window limits, string who)
    {
        Demand Told(Window side, double edge) => new("", who, side.InWords(Unit), edge);
        return this with
        {
            Window = Window.And(limits),
            SureWindow = SureWindow?.And(limits) is { IsEmpty: false } sure ? sure : null,
            Lowest = limits.Low > Window.Low ? Told(Window.AtLeast(limits.Low), limits.Low) : Lowest,
            Highest = limits.High < Window.High ? Told(Window.AtMost(limits.High), limits.High) : Highest,
        };
    }

    /// <summary><c>2.88 to 3.18</c>: what would be sure, as a cure says it; null where nothing is.</summary>
    /// <param name="unit">The unit to say it in, of the same kind.</param>
    public string? SureInWords(Unit unit) => SureWindow?.AsTyped(unit);

    /// <summary><c>axle ratio 2.85 to 3.21</c>, or the contradiction.</summary>
    public string InWords() => Contradiction ?? InWords(Unit);

    /// <summary><c>axle ratio 2.85 to 3.21</c> in another unit of the same kind.</summary>
    public string InWords(Unit unit) => $"{Quantity} {Window.InWords(unit)}";
}

/// <summary>One wish that sets an edge of a window.</summary>
/// <param name="Check">The check's id, such as <c>cruise</c>.</param>
/// <param name="Title">The trade's name of the matter.</param>
/// <param name="Wanted">What was wanted there, in words.</param>
/// <param name="Edge">The part's value at the edge, in base units.</param>
public sealed record Demand(string Check, string Title, string Wanted, double Edge)
{
    /// <summary><c>cruise engine speed at 100 km/h (2280 to 2520 rev/min)</c>.</summary>
    public string InWords => $"{char.ToLowerInvariant(Title[0])}{Title[1..]} ({Wanted})";

    /// <summary>What is wanted falls as the part rises, in inverse proportion.</summary>
    internal bool IsInverse { get; private init; }

    internal static Demand Of(Wish wish, double edge)
    {
        var finding = wish.Finding;
        return new(finding.Check, $"{finding.Title} {finding.Wish}".TrimEnd(), finding.Wanted is { } wanted ? wanted.InWords(finding.Unit) : finding.Source, edge) { IsInverse = wish.Window.IsInverse };
    }
}
