using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Bench;

/// <summary>Asks which gears, speeds and unit the table of speeds shows.</summary>
internal static class SpeedsForm
{
    private const int MostColumns = 8;
    private const string Columns = "columns";
    private const string Engine = "engine";
    private const string Road = "road";
    private const string Gears = "gears";
    private const string UnitOf = "unit";

    private static readonly IReadOnlyList<Unit> SpeedUnits = [.. Units.Of(Kind.Speed)];

    /// <param name="driveline">Today's, for the names of its gears.</param>
    /// <param name="wish">What is shown now, and takes what is wanted.</param>
    /// <param name="units">The units of the workbench.</param>
    public static Form For(Driveline driveline, SpeedsWish wish, UnitSystem units)
    {
        var unit = wish.In(units).Speed;
        var names = driveline.Steps.Select(step => step.Name).ToList();
        return new()
        {
            Title = Spoken("Table of speeds"),
            HelpPage = "Speeds",
            SaveCaption = Spoken("Show"),
            Entries =
            [
                new ChoiceEntry(Columns, Spoken("A column for"), [new(Engine, Spoken("an engine speed")), new(Road, Spoken("a road speed"))]) { Initial = wish.RoadSpeeds.Count > 0 ? Road : Engine },
                new TextEntry(Engine, Spoken("Engine speeds"))
                {
                    Initial = Written(wish.EngineSpeeds, Units.RevolutionPerMinute),
                    Hint = Spoken("rev/min, such as 1500 2000 3000, or 1500 to 3500 by 500; empty: the usual"),
                    ShownWhen = values => values[Columns] != Road,
                    Check = values => Speeds(values[Engine], CruiseGoal.ReadEngineSpeed, "1500 2000 3000").Refusal?.Sentence,
                },
                new TextEntry(Road, Spoken("Road speeds"))
                {
                    Initial = Written(wish.RoadSpeeds, unit),
                    Hint = Spoken($"such as 50 80 110, or 60 to 120 by 20; bare numbers are {unit}"),
                    ShownWhen = values => values[Columns] == Road,
                    Check = values => values.IsEmpty(Road) ? Spoken("Name at least one road speed, such as 50 80 110.") : RoadSpeeds(values, unit).Refusal?.Sentence,
                },
                new TextEntry(Gears, Spoken("Gears"))
                {
                    Initial = string.Join(", ", wish.Gears),
                    Hint = Spoken($"of {string.Join(", ", names)}; empty: all"),
                    Check = values => Chosen(values[Gears], names).Refusal?.Sentence,
                },
                new ChoiceEntry(UnitOf, Spoken("Road speed in"), [new("", Spoken("as everywhere")), .. SpeedUnits.Select(each => new ChoiceOption(each.Symbol, each.Symbol))]) { Initial = wish.Unit?.Symbol ?? "" },
            ],
            Save = values => Checks.Try(() =>
            {
                var byRoad = values[Columns] == Road;
                var engine = byRoad ? wish.EngineSpeeds : Speeds(values[Engine], CruiseGoal.ReadEngineSpeed, "1500 2000 3000").OrRefuse();
                var road = byRoad ? RoadSpeeds(values, unit).OrRefuse() : [];
                (wish.Gears, wish.EngineSpeeds, wish.RoadSpeeds) = (Chosen(values[Gears], names).OrRefuse(), engine, road);
                wish.Unit = SpeedUnits.FirstOrDefault(each => each.Symbol == values[UnitOf]);
            }),
        };
    }

    /// <summary>Several speeds, <c>1500 2000</c> or <c>1500 to 3500 by 500</c>, in base units.</summary>
    internal static Parsed<List<double>> Speeds(string text, Func<string, Parsed<Typed>> read, string example)
    {
        var steps = text.Split([" to ", " by "], StringSplitOptions.TrimEntries);
        if (steps.Length == 3) return Steps(steps, read, example);

        var speeds = new List<double>();
        foreach (var word in text.Split([' ', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (!read(word).Understood(out var typed)) return read(word).Refusal!;
            speeds.Add(typed.Value);
        }

        return Few(speeds, example);
    }

    private static Parsed<List<double>> Steps(string[] texts, Func<string, Parsed<Typed>> read, string example)
        => read(texts[0]).Then(from => read(texts[1]).Then(to => read(texts[2]).Then(by =>
        {
            var count = Math.Floor(((to.Value - from.Value) / by.Value) + 1e-9) + 1;
            return count is >= 1 and <= MostColumns
                ? Few([.. Enumerable.Range(0, (int)count).Select(k => from.Value + (k * by.Value))], example)
                : TooMany(example);
        })));

    private static Parsed<List<double>> Few(List<double> speeds, string example) => speeds.Count <= MostColumns ? speeds : TooMany(example);

    private static Refusal TooMany(string example) => new("columns", Spoken($"One to {MostColumns} columns fit."), example);

    private static Parsed<List<double>> RoadSpeeds(FormValues values, Unit unit)
        => Speeds(values[Road], text => QuantityText.ReadPlain(text, Kind.Speed, unit).Then(_ => CruiseGoal.ReadSpeed(text, unit)), "50 80 110");

    private static Parsed<List<string>> Chosen(string text, List<string> names)
    {
        var chosen = new List<string>();
        var marks = text.IndexOfAny([',', ';']) >= 0 || names.Exists(name => Same(name, text.Trim())) ? new[] { ',', ';' } : [' '];
        foreach (var word in text.Split(marks, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (names.Find(name => Same(name, word)) is not { } name) return new Refusal("gear", Spoken($"There is no gear {Shown.Quoted(word)} here."), string.Join(", ", names.TakeLast(2)));
            if (!chosen.Contains(name)) chosen.Add(name);
        }

        return chosen;
    }

    private static bool Same(string name, string word) => name.Equals(word, StringComparison.OrdinalIgnoreCase);

    private static string Written(IReadOnlyList<double> speeds, Unit unit) => string.Join(' ', speeds.Select(speed => Rounded.Typed(Math.Round(unit.FromBase(speed), 1))));
}
