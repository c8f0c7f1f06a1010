using BuildLog.Endurance.CutOff;
using BuildLog.Endurance.Disk;
using BuildLog.Endurance.Fuzz;
using BuildLog.Endurance.Programs;
using BuildLog.Endurance.Workbench;
using BuildLog.Gearing.Languages;

namespace BuildLog.Endurance;

/// <summary>Everything the program is put through. A new ordeal gets its line here.</summary>
internal static class Ordeals
{
    /// <summary>Each with how often in the short run, which takes a minute, and in the full one.</summary>
    public static IReadOnlyList<(IOrdeal Ordeal, int Short, int Full)> All { get; } =
    [
        (new Kills(Storing.ByHand), 20, 1500),
        (new Kills(Storing.ThroughTheShop), 1, 80),
        (new Kills(Migrating.Word), 2, 140),
        (new Kills(Importing.Word), 2, 140),
        (new Kills(BackingUp.Word), 2, 140),
        (new PowerCuts(Storing.ByHand), 2, 200),
        (new PowerCuts(Migrating.Word), 1, 40),
        (new PowerCuts(Importing.Word), 1, 40),
        (new PowerCuts(BackingUp.Word), 2, 40),
        (new FullDisk(), 10, 1000),
        (new TwoPrograms(), 10, 1000),
        (new FuzzedTexts(), 50_000, 1_000_000),
        (new FuzzedLists(), 50, 5000),
        (new FuzzedArchives(), 60, 5000),
        (new FuzzedFiles(), 20, 2000),
        (new RandomWalk(Language.English), 150, 100_000),
        (new RandomWalk(Language.Dutch), 150, 20_000),
        (new LongDay(), 1, 24),
    ];
}
