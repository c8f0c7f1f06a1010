namespace BuildLog.Gearing.Drivelines;

/// <summary>A thing by its kind and its name, the kind said once: <c>axle Harrow banjo</c>, but <c>gearbox 2.95 1.52 1</c> and <c>axle from the van</c>.</summary>
public static class NamedPart
{
    /// <param name="kind">The trade's word, such as <c>gearbox</c> or <c>rear axle</c>.</param>
    /// <param name="name">What it is called; it may begin with the kind already.</param>
    public static string InWords(string kind, string name)
    {
        var last = kind[(kind.LastIndexOf(' ') + 1)..];
        if (Begins(name, kind)) return name;
        return Begins(name, last) ? $"{kind[..^last.Length]}{name}" : $"{kind} {name}".Trim();
    }

    private static bool Begins(string name, string word)
        => word.Length > 0 && name.StartsWith(word, StringComparison.OrdinalIgnoreCase) && (name.Length == word.Length || !char.IsLetterOrDigit(name[word.Length]));
}
