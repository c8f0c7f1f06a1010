using System.CommandLine;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Commands;

/// <summary>The options every command has.</summary>
internal sealed class CommonOptions
{
    public Option<bool> Json { get; } = new("--json") { Description = Spoken("Print one JSON object: stated units, numbers unrounded."), Recursive = true };

    public Option<string?> Units { get; } = new("--units") { Description = Spoken("metric or imperial, for text output."), HelpName = "metric|imperial", Recursive = true };

    public Option<string?> Database { get; } = new("--database") { Description = Spoken("The shop's record, if not the usual one."), HelpName = "PATH", Recursive = true };

    public Option<bool> Demo { get; } = new("--demo") { Description = Spoken("Work on a fresh private copy of the invented demo shop."), Recursive = true };

    public void AddTo(Command root)
    {
        root.Options.Add(Json);
        root.Options.Add(Units);
        root.Options.Add(Database);
        root.Options.Add(Demo);
    }

    public UnitSystem UnitsOf(ParseResult parse) => parse.GetValue(Units) switch
    {
        null or "metric" => UnitSystem.Metric,
        "imperial" => UnitSystem.Imperial,
        var other => throw new WrongInputException(new Refusal("units", Spoken($"'{other}' is no system of units: metric or imperial."), "--units imperial"), "--units"),
    };
}
