namespace BuildLog.Gearing.Options;

/// <summary>What is said of a part on offer, and what was counted or measured on it since: <c>3.36; counted 3.350±0.027</c>.</summary>
/// <remarks>A ± that is said makes the number narrower and no count of it. The word is the same in all languages: it is stored.</remarks>
/// <param name="Said">By whoever sells it; empty where he says nothing.</param>
/// <param name="Counted">What decides wherever it stands; empty where nobody has counted.</param>
public sealed record Claim(string Said, string Counted = "")
{
    private const string Word = "counted ";
    private const string Between = "; ";

    /// <summary>Parts a line at its last <c>counted </c>: what stands before it is said, what stands behind it was counted.</summary>
    /// <remarks>Nothing is refused here: whatever is typed is a claim, an empty line an empty one. Whether its numbers can be read, says who reads them (<see cref="ToldPart"/>).</remarks>
    public static Claim Read(string text)
    {
        var at = text.LastIndexOf(Word, StringComparison.OrdinalIgnoreCase);
        return at >= 0 ? new(text[..at].Trim().TrimEnd(';').Trim(), text[(at + Word.Length)..].Trim())
            : new(text.Trim());
    }

    /// <summary>What a verdict rests on.</summary>
    public string Decides => IsWordAlone ? Said : Counted;

    /// <summary>Nothing but the seller's word is known.</summary>
    public bool IsWordAlone => Counted.Length == 0;

    /// <summary>As it is typed and stored.</summary>
    public override string ToString() => IsWordAlone ? Said : Said.Length == 0 ? $"{Word}{Counted}" : $"{Said}{Between}{Word}{Counted}";
}
