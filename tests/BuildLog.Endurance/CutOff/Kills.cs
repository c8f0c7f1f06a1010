namespace BuildLog.Endurance.CutOff;

/// <summary>Kills a program at its work as often as asked, each time at a moment of no one's choice, and looks at what it left.</summary>
internal sealed class Kills(string work) : IOrdeal
{
    private readonly Random moment = new(20_260_503);

    public string Name => $"kill -9 while {work}";

    public Survival Run(int rounds)
    {
        var (troubles, told, middle) = (new List<string>(), 0, 0);
        var (current, folder) = (Work.Called(work), "");
        using var workers = new Workers(work);
        for (var round = 0; round < rounds; round++)
        {
            if (round % current.RoundsOfAFolder == 0)
            {
                if (folder.Length > 0) Directory.Delete(folder, recursive: true);
                folder = Directory.CreateTempSubdirectory("buildlog-kills-").FullName;
                current = Work.Called(work);
                current.Lay(folder);
            }

            using var worker = workers.Take();
            var said = worker.GoTo(folder, current.MostSaid, moment);
            said.AddRange(worker.Kill());
            told += said.Count;
            if (said.Count == 0 || current.MostSaid > 0) middle++;
            troubles.AddRange(current.Troubles(folder, said).Select(trouble => FormattableString.Invariant($"round {round + 1}: {trouble}")));
        }

        Directory.Delete(folder, recursive: true);
        return new(rounds, troubles, FormattableString.Invariant($"{middle} in the middle of it, {told:N0} times something was said to be stored"));
    }
}
