namespace BuildLog.Gearing.Quantities;

/// <summary>What was wrong with something typed, in one sentence, and an example that would be right.</summary>
/// <param name="Code">A short stable word for programs, such as <c>unknown-unit</c>.</param>
/// <param name="Message">What was wrong and where reading stopped.</param>
/// <param name="Example">One input that would have been understood.</param>
public sealed record Refusal(string Code, string Message, string Example)
{
    /// <summary>The line a person reads.</summary>
    public string Sentence => Example.Length == 0 ? Message : Spoken($"{Message} Example: {Example}");

    /// <summary>The same of a whole text, which is named where the message itself repeats no piece of it.</summary>
    public Refusal In(string whole)
        => Shown.Cut(whole).Length == 0 || Message.StartsWith('\'') || Message.Contains(" '", StringComparison.Ordinal) || Message.Contains("('", StringComparison.Ordinal)
            ? this
            : this with { Message = $"{Shown.Quoted(whole)}: {char.ToLowerInvariant(Message[0])}{Message[1..]}" };
}

/// <summary>Thrown where the impossible is asked for; the message is a sentence for the person at the bench.</summary>
public sealed class RefusedException : Exception
{
    /// <summary>Thrown with what was wrong and an example of right.</summary>
    public RefusedException(Refusal refusal) : base(refusal.Message) => Refusal = refusal;

    /// <summary>The same, its refusal put together from the three.</summary>
    public RefusedException(string code, string message, string example) : this(new Refusal(code, message, example)) { }

    /// <summary>What was wrong, and an example of right; its message is the exception's.</summary>
    public Refusal Refusal { get; }
}
