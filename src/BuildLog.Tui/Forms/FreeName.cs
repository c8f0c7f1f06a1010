namespace BuildLog.Tui.Forms;

/// <summary>A name that nothing else is called by.</summary>
internal static class FreeName
{
    /// <summary>The name itself, or with the first number behind it that is free.</summary>
    /// <param name="name">What it would be called.</param>
    /// <param name="taken">What others are called; large and small letters are alike.</param>
    public static string Of(string name, IEnumerable<string> taken)
    {
        var others = taken.ToHashSet(StringComparer.OrdinalIgnoreCase);
        return Enumerable.Range(1, others.Count + 1).Select(k => k == 1 ? name : $"{name} ({k})").First(free => !others.Contains(free));
    }
}
