using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>Findings as the checks of the running gear write them.</summary>
internal static class FindingOf
{
    /// <summary>A judged number.</summary>
    public static Finding Judged(
        this ICheck check, IReadOnlyList<Position> between, (Verdict Verdict, Because Because) judged, string says, string source,
        Measured value, Unit unit, Window wanted, Window? straddled = null, IReadOnlyList<string>? cures = null, IReadOnlyList<PartWindow>? windows = null) => new()
        {
            Check = check.Id,
            Title = check.Title,
            Verdict = judged.Verdict,
            Because = judged.Because,
            Between = between,
            Says = says,
            Value = value,
            Unit = unit,
            Wanted = wanted,
            Source = source,
            Cures = judged.Verdict == Verdict.Fits ? [] : [.. cures ?? [], .. (windows ?? []).Select(window => window.InWords())],
            Windows = windows ?? [],
            SettledBy = judged == (Verdict.Watch, Because.Uncertainty) ? Settling.Of(value, straddled ?? wanted) : null,
        };

    /// <summary>Something judged that is no number, such as a thread.</summary>
    public static Finding Plain(
        this ICheck check, IReadOnlyList<Position> between, Verdict verdict, Because because, string says, string source, params IReadOnlyList<string> cures) => new()
        {
            Check = check.Id,
            Title = check.Title,
            Verdict = verdict,
            Because = because,
            Between = between,
            Says = says,
            Source = source,
            Cures = cures,
        };

    /// <summary>A number is missing: what cannot be said, what is missing, and how to get it.</summary>
    public static Finding Open(this ICheck check, IReadOnlyList<Position> between, string matter, IReadOnlyList<Lack> missing, string source)
        => check.Plain(
            between, Verdict.Open, Because.MissingInput,
            $"{matter} cannot be said: {string.Join(" and ", missing.Select(lack => lack.What))}.", source, [.. missing.Select(lack => lack.Cure)]);
}

/// <summary>A number that is missing and the cheapest way to get it.</summary>
internal sealed record Lack(string What, string Cure);
