using BuildLog.Data.Files;
using BuildLog.Data.Tests.Files;
using BuildLog.Endurance.CutOff;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Endurance.Fuzz;

/// <summary>Record files with bits turned or cut off: each is read through or refused with a sentence.</summary>
internal sealed class FuzzedFiles : IOrdeal
{
    public string Name => "fuzzed record files";

    public Survival Run(int rounds)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-fuzz-").FullName;
        Records.Demo.LayIn(folder);
        var sound = File.ReadAllBytes(Records.In(folder));
        var (troubles, refused, chance) = (new List<string>(), 0, new Random(20_260_503));
        for (var round = 1; round <= rounds; round++)
        {
            var path = Path.Combine(folder, FormattableString.Invariant($"{round}.db"));
            File.WriteAllBytes(path, Spoilt.Bytes(sound, chance));
            try
            {
                EverythingInAFile.Read(path);
            }
            catch (Exception sentence) when (sentence is RecordException or RefusedException)
            {
                refused++;
            }
#pragma warning disable CA1031 // Anything else that is thrown is what is looked for.
            catch (Exception thrown)
            {
                troubles.Add(FormattableString.Invariant($"round {round}: {thrown.GetType().Name}: {thrown.Message} {thrown.StackTrace?.Split('\n')[0].Trim()}"));
            }
#pragma warning restore CA1031

            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            foreach (var left in Directory.GetFiles(folder, FormattableString.Invariant($"{round}.db*"))) File.Delete(left);
        }

        Directory.Delete(folder, recursive: true);
        return new(rounds, troubles, FormattableString.Invariant($"{refused:N0} refused in a sentence, the others read through"));
    }
}
