using BuildLog.Gearing.Checks;
namespace BuildLog.Tui.Workbench;

/// <summary>How many findings of a vehicle have each verdict, and the few words that say so.</summary>
public sealed record VerdictCounts(int Clash = 0, int Open = 0, int Watch = 0, int Fits = 0)
{
    public int Total => Clash + Open + Watch + Fits;

    /// <summary>The worst verdict present; null where nothing has been checked.</summary>
    public Verdict? Worst =>
        Clash > 0 ? Verdict.Clash
        : Open > 0 ? Verdict.Open
        : Watch > 0 ? Verdict.Watch
        : Fits > 0 ? Verdict.Fits
        : null;

    /// <summary>The counts that matter, worst first, each by itself.</summary>
    public IReadOnlyList<string> Each()
    {
        if (Total == 0) return [Spoken("not checked")];
        if (Fits == Total) return [Fits == 1 ? Spoken("1 fits") : Spoken("all fit")];

        return
        [
            .. new[] { (Count: Clash, Word: Spoken("clash")), (Count: Open, Word: Spoken("open")), (Count: Watch, Word: Spoken("watch")) }
                .Where(part => part.Count > 0)
                .Select(part => $"{part.Count} {part.Word}"),
        ];
    }

    /// <summary>The counts that matter, worst first: "2 clash 1 open"; "all fit" when nothing else is left.</summary>
    /// <param name="cells">Where not all of it has room, whole counts are left out from the milder end.</param>
    public string Summary(int cells = int.MaxValue)
    {
        var parts = Each().ToList();
        var all = string.Join(' ', parts);
        while (all.Length > cells && parts.Count > 1)
        {
            parts.RemoveAt(parts.Count - 1);
            all = string.Join(' ', parts) + " …";
        }

        return all;
    }
}
