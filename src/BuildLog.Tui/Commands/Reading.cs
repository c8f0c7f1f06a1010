using System.CommandLine;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Commands;

/// <summary>Reads an option's text; a refusal names the option.</summary>
internal static class Reading
{
    /// <summary>The option's value, or null if it was not given.</summary>
    public static T? Read<T>(this ParseResult parse, Option<string?> option, Func<string, Parsed<T>> read)
        where T : class
        => parse.GetValue(option) is { } text ? Of(option.Name, text, read) : null;

    /// <summary>The option's number, or <paramref name="otherwise"/> if it was not given.</summary>
    public static double ReadNumber(this ParseResult parse, Option<string?> option, double otherwise)
        => parse.GetValue(option) is { } text ? Of(option.Name, text, typed => QuantityText.ReadNumber(typed).Showing(Rounded.Typed(otherwise))) : otherwise;

    public static T Of<T>(string option, string text, Func<string, Parsed<T>> read)
        where T : notnull
    {
        var parsed = read(text);
        return parsed.Understood(out var value) ? value : throw Wrong(option, parsed.Refusal!);
    }

    /// <summary>Whatever is refused inside is the fault of this option.</summary>
    public static T Blaming<T>(string option, Func<T> compute)
        where T : notnull
        => Of(option, "", _ => Parsed.From(compute));

    /// <summary>What is refused inside is the fault of the option that its code names, or else of the readings.</summary>
    public static T Blaming<T>(Func<T> compute, Option readings, params ReadOnlySpan<(string Code, Option Option)> others)
        where T : notnull
    {
        var parsed = Parsed.From(compute);
        if (parsed.Understood(out var value)) return value;

        foreach (var (code, option) in others)
        {
            if (parsed.Refusal!.Code == code) throw Wrong(option.Name, parsed.Refusal);
        }

        throw Wrong(readings.Name, parsed.Refusal!);
    }

    public static WrongInputException Wrong(string option, Refusal refusal)
        => new(refusal with { Example = refusal.Example.Length == 0 ? "" : $"{option} {Quoted(refusal.Example)}" }, option);

    private static string Quoted(string example) => example.Contains(' ', StringComparison.Ordinal) ? $"\"{example}\"" : example;
}
