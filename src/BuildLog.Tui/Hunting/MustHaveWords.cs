using BuildLog.Data.Hunting;
using BuildLog.Gearing.Checks;

namespace BuildLog.Tui.Hunting;

/// <summary>What an offer tells of what the part must have, in words.</summary>
internal static class MustHaveWords
{
    /// <summary>What is told to be otherwise.</summary>
    public static IEnumerable<string> Others(OfferJudgement judged)
        => judged.MustHaves.Where(must => must.Verdict == Verdict.Clash).Select(must => Spoken($"{must.Must.What}: it has {must.Told}, and must have {must.Must.Text}."));

    /// <summary>What nobody told, to be asked or measured.</summary>
    public static IEnumerable<string> Untold(OfferJudgement judged)
        => judged.MustHaves.Where(must => must.Verdict == Verdict.Watch).Select(must => Spoken($"{must.Must.What}: not told; ask or measure, it must have {must.Must.Text}."));
}
