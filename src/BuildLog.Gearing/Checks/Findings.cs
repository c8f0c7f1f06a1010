using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>How a check words what it found.</summary>
internal static class Findings
{
    /// <summary>A value against a window.</summary>
    public static Finding Judged(this ICheck check, Judgement judgement)
    {
        var (verdict, because) = judgement.ByLimits ?? Verdicts.Judge(judgement.Value, judgement.Wanted, judgement.LimitIsVerified);
        return new()
        {
            Check = check.Id,
            Title = check.Title,
            Verdict = verdict,
            Because = because,
            Between = judgement.Between,
            Sentence = judgement.Says.Judged(judgement.Unit.Kind, judgement.Reaches ?? judgement.Wanted),
            Value = judgement.Value,
            Unit = judgement.Unit,
            Wanted = judgement.Wanted,
            Reaches = judgement.Reaches,
            Source = judgement.Source,
            LimitIsVerified = judgement.LimitIsVerified,
            Advice = verdict == Verdict.Fits ? [] : [.. judgement.Cures],
            Windows = judgement.Windows,
            SettledBy = because == Because.Uncertainty ? Settling.Of(judgement.Value, judgement.Reaches ?? judgement.Wanted) : null,
        };
    }

    /// <summary>Judged at the least a speed can be: what fits there need not fit at more, so it is open until that is known.</summary>
    /// <param name="finding">As judged at that speed.</param>
    /// <param name="toKnow">What to enter to know more of the speed; null where it can be no more.</param>
    public static Finding AtLeast(this Finding finding, string? toKnow) => toKnow is null || finding.Verdict != Verdict.Fits ? finding : finding with
    {
        Verdict = Verdict.Open,
        Because = Because.MissingInput,
        Sentence = Said.As($"{finding.Sentence} It may be faster; how much is not known."),
        Value = null,
        Advice = [toKnow],
    };

    /// <summary>Judged at the fastest turn of a propshaft: with what was assumed for it, and as <see cref="AtLeast"/> where it may be faster.</summary>
    public static Finding At(this Finding finding, FastestTurn fastest, Driveline driveline)
        => (fastest.IsByLoad ? finding with { Sentence = Said.As($"{finding.Sentence}{AssumedLoad.InWords(driveline)}") } : finding).AtLeast(fastest.ToKnow);

    /// <summary>Something that is right or wrong without a number, such as a thread.</summary>
    public static Finding Plain(
        this ICheck check, IReadOnlyList<Position> between, Verdict verdict, Because because, Sentence says, string source, params IReadOnlyList<Sentence> cures) => new()
        {
            Check = check.Id,
            Title = check.Title,
            Verdict = verdict,
            Because = because,
            Between = between,
            Sentence = says,
            Source = source,
            Advice = cures,
        };

    /// <summary>What cannot be said where nothing was wanted in numbers.</summary>
    public static Finding Open(this ICheck check, IReadOnlyList<Position> between, string what, IEnumerable<Missing> missing, string source)
    {
        var all = missing.ToList();
        return check.Plain(
            between, Verdict.Open, Because.MissingInput, $"{what} cannot be said: {string.Join(Spoken(" and "), all.Select(entry => entry.What))}.", source,
            [.. all.Select(entry => entry.Cure)]);
    }

    /// <summary>What cannot be said, and the cheapest way to each missing number.</summary>
    public static Finding Open(
        this ICheck check, IReadOnlyList<Position> between, string what, IEnumerable<Missing> missing, Unit unit, Window wanted, string source)
        => check.Open(between, what, missing, source) with { Unit = unit, Wanted = wanted };
}

/// <summary>What a check has to say of one value.</summary>
internal sealed record Judgement(IReadOnlyList<Position> Between, Measured Value, Unit Unit, Window Wanted, Sentence Says, string Source)
{
    /// <summary>False for a limit from memory or common practice.</summary>
    public bool LimitIsVerified { get; init; } = true;

    /// <summary>Where more than the one window decides, what came of it.</summary>
    public (Verdict Verdict, Because Because)? ByLimits { get; init; }

    /// <summary>Where more than the one window decides, the one whose limit the interval reaches over.</summary>
    public Window? Reaches { get; init; }

    public IEnumerable<Sentence> Cures { get; init; } = [];

    public IReadOnlyList<PartWindow> Windows { get; init; } = [];
}
