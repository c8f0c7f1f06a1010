using System.CommandLine;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Commands;

/// <summary>The options every command has.</summary>
internal sealed class CommonOptions
{
    public Option<bool> Json { get; } = new("--json") { Description = Spoken("Print one JSON object: stated units, numbers unrounded."), Recursive = true };

    public Option<string?> Units { get; } = new("--units") { Description = Spoken("metric or imperial, for text output."), HelpName = "metric|imperial", Recursive = true };

    public Option<string?> InLanguage { get; } = new(SpokenHere.OptionName) { Description = Words.Spoken("The language of text output: en or nl; without it the machine's."), HelpName = "en|nl", Recursive = true };

    public Option<string?> Database { get; } = new("--database") { Description = Spoken("The shop's record, if not the usual one."), HelpName = "PATH", Recursive = true };

    public Option<bool> Demo { get; } = new("--demo") { Description = Spoken("Work on a fresh private copy of the invented demo shop."), Recursive = true };

    public void AddTo(Command root)
    {
        root.Options.Add(Json);
        root.Options.Add(Units);
        root.Options.Add(InLanguage);
        root.Options.Add(Database);
        root.Options.Add(Demo);
    }

    public UnitSystem UnitsOf(ParseResult parse) => parse.GetValue(Units) switch
    {
        null or "metric" => UnitSystem.Metric,
        "imperial" => UnitSystem.Imperial,
        var other => throw new WrongInputException(new Refusal("units", Spoken($"'{other}' is no system of units: metric or imperial."), "--units imperial"), "--units"),
    };

    /// <summary>Refuses a language that is not spoken here; which one is spoken was chosen before.</summary>
    public void CheckLanguage(ParseResult parse)
    {
        if (parse.GetValue(InLanguage) is { } asked && Language.Read(asked) is null)
            throw new WrongInputException(new Refusal("language", Words.Spoken($"{Shown.Quoted(asked)} is no language spoken here: {string.Join(", ", Language.All.Select(each => $"{each.Code} ({each.Name})"))}."), "--language nl"), SpokenHere.OptionName);
    }
}
