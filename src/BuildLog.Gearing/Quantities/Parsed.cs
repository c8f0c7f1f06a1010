using System.Diagnostics.CodeAnalysis;

namespace BuildLog.Gearing.Quantities;

/// <summary>The outcome of reading something typed: either the value or the refusal, never both.</summary>
public readonly record struct Parsed<T>
    where T : notnull
{
    private readonly T? value;

    private Parsed(T? value, Refusal? refusal) => (this.value, Refusal) = (value, refusal);

    /// <summary>Why it was refused; null where it was understood.</summary>
    public Refusal? Refusal { get; }

    /// <summary>Whether it was understood, and the value if so.</summary>
    public bool Understood([NotNullWhen(true)] out T? understood)
    {
        understood = value;
        return Refusal is null;
    }

    /// <summary>The value, or the refusal as an exception for whoever cannot ask again.</summary>
    public T OrRefuse() => Refusal is null ? value! : throw new RefusedException(Refusal);

    /// <summary>Goes on with the value; a refusal stays what it is.</summary>
    public Parsed<TNext> Then<TNext>(Func<T, Parsed<TNext>> next)
        where TNext : notnull
        => Refusal is null ? next(value!) : Refusal;

    /// <summary>The same with a refusal that names the whole text it is of, see <see cref="Refusal.In"/>.</summary>
    public Parsed<T> In(string whole) => Refusal is null ? this : Refusal.In(whole);

    /// <summary>The same with a refusal that shows this example, where a better one is known than by whoever read it.</summary>
    public Parsed<T> Showing(string example) => Refusal is null ? this : Refusal with { Example = example };

    /// <summary>A value that was understood.</summary>
    public static implicit operator Parsed<T>(T value) => new(value, null);

    /// <summary>A refusal.</summary>
    public static implicit operator Parsed<T>(Refusal refusal) => new(default, refusal);
}

/// <summary>Makes outcomes of reading from what throws.</summary>
public static class Parsed
{
    /// <summary>What is made, or why it was refused.</summary>
    public static Parsed<T> From<T>(Func<T> make)
        where T : notnull
    {
        try
        {
            return make();
        }
        catch (RefusedException refused)
        {
            return refused.Refusal;
        }
    }
}
