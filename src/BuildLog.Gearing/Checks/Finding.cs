using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>What one check says of one driveline.</summary>
public sealed record Finding
{
    private static readonly Lazy<IReadOnlyList<WindowOfPart>> None = new([]);

    /// <summary>The source of a limit that the owner set.</summary>
    public static string OwnersGoal => Spoken("owner's goal");

    /// <summary>The check's id, such as <c>cruise</c>.</summary>
    public required string Check { get; init; }

    /// <summary>The trade's name of the matter.</summary>
    public required string Title { get; init; }

    /// <summary>Fits, watch, clash or open.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>What the verdict rests on.</summary>
    public required Because Because { get; init; }

    /// <summary>The parts whose marriage it is about; the joint it hangs at. Empty where it is about the driveline as a whole.</summary>
    public required IReadOnlyList<Position> Between { get; init; }

    /// <summary>What it says, with the numbers.</summary>
    public required Sentence Sentence { get; init; }

    /// <summary>The sentence in the units of the check.</summary>
    public string Says => Sentence.ToString();

    /// <summary>The sentence in the units a person reads.</summary>
    /// <param name="shown">The unit to show for the one the check words a number in.</param>
    public string SaysIn(Func<Unit, Unit> shown) => Sentence.In(shown);

    /// <summary>The number that was judged, in the base unit of <see cref="Unit"/>; null where an input is missing.</summary>
    public Measured? Value { get; init; }

    /// <summary>How to show <see cref="Value"/>, <see cref="Wanted"/>; one for a ratio or where nothing was judged in numbers.</summary>
    public Unit Unit { get; init; } = Units.One;

    /// <summary>What was wanted, in the same base unit.</summary>
    public Window? Wanted { get; init; }

    /// <summary>The window whose limit the value is nearest to reaching over, where there is one that is good and a wider one that is allowed; null for <see cref="Wanted"/>.</summary>
    public Window? Reaches { get; init; }

    /// <summary>What all findings together want of each number. Worked out when cures are asked for.</summary>
    internal Lazy<IReadOnlyList<WindowOfPart>> Together { get; init; } = None;

    /// <summary>Where the limit comes from.</summary>
    public required string Source { get; init; }

    /// <summary>False for a limit from memory or common practice: it may warn, never clash.</summary>
    public bool LimitIsVerified { get; init; } = true;

    /// <summary>Which of several wishes of its check it is about, such as <c>at 100 km/h</c>; empty where there is only one.</summary>
    public string Wish { get; init; } = "";

    /// <summary>Cures that are no window: a part, a question, the cheapest way to get a missing number.</summary>
    public IReadOnlyList<Sentence> Advice { get; init; } = [];

    /// <summary>Cures as numbers: what a part would have to be. A finding that fits has them too, for what is planned next.</summary>
    public IReadOnlyList<PartWindow> Windows { get; init; } = [];

    /// <summary>What would cure it, each a number or a part; none where it fits.</summary>
    public IReadOnlyList<string> Cures => CuresIn(unit => unit);

    /// <summary>The one measurement that would turn a watch into a fits or a clash.</summary>
    public string? SettledBy { get; init; }

    /// <summary>The cures in the units a person reads.</summary>
    /// <param name="shown">The unit to show for the one the check words its windows in.</param>
    public IReadOnlyList<string> CuresIn(Func<Unit, Unit> shown)
    {
        // What is inside already, though not surely, is cured by what would be sure, not by what is there.
        if (Verdict == Verdict.Watch && Value is { } value && Wanted is { } wanted && wanted.Contains(value.Value))
            return [.. Advised(shown), .. Made.Where(window => window.SureInWords(window.Unit) is not null).Select(window => window.BestInWords(shown(window.Unit))), .. Excluded(shown)];

        // Elsewhere too what is sure is named first; where nothing is, what would do with the other numbers as they are.
        string[] windows = [.. Made.Select(window => window.BestInWords(shown(window.Unit)))];
        return Verdict switch
        {
            Verdict.Fits => [.. Advised(shown)],
            Verdict.Open => [.. Advised(shown), .. windows.Select(window => Spoken($"{window} would do"))],
            _ when Windows.Count > 0 && Windows.All(window => window.AsMade is null) => [.. Advised(shown), Spoken("no one part is made that far off: it takes two, or another wish")],
            _ => [.. Advised(shown), .. windows, .. Excluded(shown)],
        };
    }

    private IEnumerable<PartWindow> Made => Windows.Where(window => ExcludedBy(window) is null).Select(window => Kept(window).AsMade).OfType<PartWindow>();

    // A part that cures this keeps to whatever else is wished of it, such as tyres to the limit of their diameter.
    private PartWindow Kept(PartWindow window) => WishedOf(window) is { Window.IsEmpty: false } wished && wished.Window.Overlaps(window.Window) ? window.And(wished.Window, wished.SureWindow) : window;

    // A part that would cure this and miss another wish is no cure; which two wishes exclude each other is said instead, and once where no part is left.
    private IEnumerable<string> Excluded(Func<Unit, Unit> shown)
    {
        var excluded = Windows.Select(ExcludedBy).OfType<WindowOfPart>().Select(all => all with { Unit = shown(all.Unit) }).ToList();
        if (excluded.Count == Windows.Count && excluded.All(all => all.Contradiction is not null)) return excluded.Take(1).Select(all => Spoken($"one of two wishes has to give way: {all.Contradiction!.TrimEnd('.')}"));

        return excluded.Select(all => all.Contradiction is { } contradiction
            ? Spoken($"no {all.Quantity} does for all: {contradiction.TrimEnd('.')}")
            : Spoken($"no {all.Quantity} does for this too: {all.InWords(all.Unit)} is wanted"));
    }

    // All that is wanted of this number, where two of it, this finding's among them, exclude each other; or where all of it excludes what practice would have, or leaves nothing that is made.
    private WindowOfPart? ExcludedBy(PartWindow window)
        => WishedOf(window) is { } all
            && (all.Window.IsEmpty ? !LimitIsVerified || all.IsDemandedBy(this) : (!LimitIsVerified && !all.Window.Overlaps(window.Window)) || (window.AsMade is not null && Kept(window).AsMade is null))
            ? all : null;

    private WindowOfPart? WishedOf(PartWindow window) => Together.Value.FirstOrDefault(all => all.IsAbout(window));

    private IEnumerable<string> Advised(Func<Unit, Unit> shown) => Advice.Select(cure => cure.In(shown));
}
