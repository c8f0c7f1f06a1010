namespace BuildLog.Gearing.Options;

/// <summary>The options that no other dominates; of those alike in every score the first in the lists stays, so that any order of adding ends alike.</summary>
internal sealed class Front<T>
    where T : IComparable<T>
{
    private readonly List<(OptionScore Score, T What)> members = [];

    public IReadOnlyList<(OptionScore Score, T What)> Members => members;

    /// <summary>Whether a member dominates the score.</summary>
    public bool Beats(in OptionScore score)
    {
        foreach (var (held, _) in members)
        {
            if (held.Dominates(score)) return true;
        }

        return false;
    }

    /// <summary>Takes it in and throws out what it dominates, unless it is dominated itself.</summary>
    public void Add(in OptionScore score, T what)
    {
        for (var k = 0; k < members.Count; k++)
        {
            var (held, by) = members[k];
            if (!held.Dominates(score) && !(held == score && by.CompareTo(what) <= 0)) continue;

            // What dominated once will likely do so again: it is asked first from now on.
            if (k > 0) (members[0], members[k]) = (members[k], members[0]);
            return;
        }

        var better = score;
        members.RemoveAll(member => better.Dominates(member.Score) || better == member.Score);
        members.Add((score, what));
    }
}
