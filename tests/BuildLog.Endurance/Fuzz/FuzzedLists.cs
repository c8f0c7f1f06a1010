using BuildLog.Data;
using BuildLog.Data.Files;
using BuildLog.Data.Lists;
using BuildLog.Endurance.CutOff;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Endurance.Fuzz;

/// <summary>Spoilt CSV of parts, offers and costs, taken into a record: all rows or none, and the record stays sound.</summary>
internal sealed class FuzzedLists : IOrdeal
{
    private const int RoundsOfARecord = 200;

    public string Name => "fuzzed lists (CSV)";

    public Survival Run(int rounds)
    {
        var (troubles, refused, chance) = (new List<string>(), 0, new Random(20_260_503));
        for (var done = 0; done < rounds; done += RoundsOfARecord)
        {
            var folder = Directory.CreateTempSubdirectory("buildlog-fuzz-").FullName;
            Records.Demo.LayIn(folder);
            using (var shop = ShopFile.Open(Records.In(folder)))
            {
                var sound = Enum.GetValues<ListOf>().ToDictionary(what => what, what => Written(shop, what));
                for (var round = done + 1; round <= Math.Min(rounds, done + RoundsOfARecord); round++)
                {
                    var what = (ListOf)(round % sound.Count);
                    var changes = shop.Changes(most: 1)[0].Id;
                    try
                    {
                        using var csv = new StringReader(Spoilt.Text(sound[what], chance));
                        shop.ReadList(what, csv);
                    }
                    catch (RefusedException)
                    {
                        refused++;
                        if (shop.Changes(most: 1)[0].Id != changes) troubles.Add(FormattableString.Invariant($"round {round}: something was stored of a {what} list that was refused"));
                    }
#pragma warning disable CA1031 // Anything else that is thrown is what is looked for.
                    catch (Exception thrown)
                    {
                        troubles.Add(FormattableString.Invariant($"round {round}, {what}: {thrown.GetType().Name}: {thrown.Message} {thrown.StackTrace?.Split('\n')[0].Trim()}"));
                    }
#pragma warning restore CA1031
                }
            }

            troubles.AddRange(RecordCheck.Of(Records.In(folder)).Troubles());
            Directory.Delete(folder, recursive: true);
        }

        return new(rounds, troubles, FormattableString.Invariant($"{refused:N0} refused in a sentence with nothing stored, the others taken in"));
    }

    private static string Written(Shop shop, ListOf what)
    {
        using var text = new StringWriter();
        shop.WriteList(what, text);
        return text.ToString();
    }
}
