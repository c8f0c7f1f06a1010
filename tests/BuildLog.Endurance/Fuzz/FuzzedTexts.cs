using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Jobs;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Quantities;
using CsCheck;

namespace BuildLog.Endurance.Fuzz;

/// <summary>Texts that nobody should type, given to every reader of quantities, tyre sizes, counts, days, money, hours and torques.</summary>
internal sealed class FuzzedTexts : IOrdeal
{
    private static readonly string[] DayPieces =
    [
        "before ", "until ", "after ", "since ", "from ", "about ", "~", "ca. ", "between ", " and ", " to ", "-", "–", "early ", "mid ", "late ", "spring ", "winter ", "3 May 2026", "May 2026", "2026", "2026-05",
        "2026-5-3", "03/05/2026", "1970s", "0001-01-01", "1 January 0001", "9999-12-31", "December 9999", "9999", "9999-12", "2023/24", "2999", "1000", "00", "?", "unknown", "-0", "29 February 2023", "1 ", ",", " ", "'s",
        "€", "12.50", "1,234", "EUR", "0:00", "2:30", "99999999999999999999", "h", "min", "at", "Nm", "rpm", "kW", "\u001b[2J", "\0", "\ud83d",
    ];

    private static readonly Gen<string> Days = Gen.Int[0, DayPieces.Length - 1].Array[0, 6].Select(picks => string.Concat(picks.Select(pick => DayPieces[pick])));

    private static readonly Dictionary<string, (Gen<string> Texts, Func<string, Refusal?> Read)> OfTheRecord = new()
    {
        ["day"] = (Days, text => LooseDayText.Read(text).Refusal),
        ["money"] = (Days, text => MoneyText.Read(text, Currency.Euro).Refusal),
        ["hours"] = (Days, text => WorkTime.Read(text).Refusal),
        ["torque with its air"] = (AnyText.Of, text => TorqueText.Read(text).Refusal),
    };

    public string Name => "fuzzed texts";

    public Survival Run(int rounds)
    {
        var readers = EveryReader.Refusals.Select(reader => (Name: reader.Key, Texts: AnyText.Of, Read: reader.Value))
            .Concat(OfTheRecord.Select(reader => (Name: reader.Key, reader.Value.Texts, reader.Value.Read))).ToList();
        var (troubles, understood, chance) = (new List<string>(), 0, new PCG(20_260_503));
        for (var k = 0; k < rounds; k++)
        {
            var (name, texts, read) = readers[k % readers.Count];
            var text = texts.Generate(chance, null, out _);
            try
            {
                if (read(text) is not { } refusal) understood++;
                else if (refusal.Message.Any(char.IsControl)) troubles.Add($"{name}: {Escaped(text)}: the refusal has control characters");
            }
#pragma warning disable CA1031 // Anything that is thrown is what is looked for.
            catch (Exception thrown)
            {
                troubles.Add($"{name}: {Escaped(text)}: {thrown.GetType().Name}: {thrown.Message}");
            }
#pragma warning restore CA1031
        }

        return new(rounds, troubles, FormattableString.Invariant($"{readers.Count} readers, {understood:N0} texts understood, the others refused in a sentence"));
    }

    private static string Escaped(string text) => System.Text.Json.JsonSerializer.Serialize(text);
}
