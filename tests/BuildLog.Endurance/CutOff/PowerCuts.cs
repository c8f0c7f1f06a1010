namespace BuildLog.Endurance.CutOff;

/// <summary>Cuts the power while a program writes, as far as that can be had without a switch.</summary>
/// <remarks>
/// The record lies on a file system of its own in an image file. The program is stopped, not killed, and the image copied as it lies: what the file
/// system has not sent to its disk yet is not in it. The copy is repaired as at the next start of a machine, mounted, and looked through. Not shown:
/// a disk that reorders what it was sent, or says that it has written what it has not.
/// </remarks>
internal sealed class PowerCuts(string work) : IOrdeal
{
    private const int ImageMegabytes = 64;
    private readonly Random moment = new(20_260_503);

    public string Name => $"power cut while {work}";

    public Survival Run(int rounds)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-power-").FullName;
        try
        {
            if (WhyNot(folder) is { } reason) return Survival.NotHere(reason);

            var (troubles, told) = (new List<string>(), 0);
            using var workers = new Workers(work);
            for (var round = 0; round < rounds; round++)
            {
                using var worker = workers.Take();
                var (found, said) = Cut(worker, folder);
                told += said;
                troubles.AddRange(found.Select(trouble => FormattableString.Invariant($"round {round + 1}: {trouble}")));
            }

            return new(rounds, troubles, FormattableString.Invariant($"{told:N0} times something was said to be stored"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private (IReadOnlyList<string> Troubles, int Said) Cut(Worker worker, string folder)
    {
        var (image, disk) = (Path.Combine(folder, "disk.img"), Directory.CreateDirectory(Path.Combine(folder, "disk")).FullName);
        var (cut, after) = (Path.Combine(folder, "cut.img"), Directory.CreateDirectory(Path.Combine(folder, "after")).FullName);
        File.Copy(Path.Combine(folder, "empty.img"), image, overwrite: true);
        var current = Work.Called(work);
        List<string> said;
        Command.Must("mount", "-o", "loop", image, disk);
        try
        {
            current.Lay(disk);
            Command.Must("sync", "-f", disk);
            said = worker.GoTo(disk, current.MostSaid, moment);
            Command.Must("kill", "-STOP", FormattableString.Invariant($"{worker.Id}"));
            File.Copy(image, cut, overwrite: true);
            said.AddRange(worker.Kill());
        }
        finally
        {
            Command.Must("umount", disk);
        }

        // 1: it had something to put right, which is what it is there for.
        if (Command.Run("e2fsck", "-fy", cut) is var (code, says) && code > 1) return ([$"the file system is damaged: {says}"], said.Count);
        Command.Must("mount", "-o", "loop", cut, after);
        try
        {
            return ([.. current.Troubles(after, said)], said.Count);
        }
        finally
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            Command.Must("umount", after);
        }
    }

    private static string? WhyNot(string folder)
    {
        if (!OperatingSystem.IsLinux()) return "loop mounts are of Linux";
        if (!Environment.IsPrivilegedProcess) return "only root may mount an image";

        var (image, disk) = (Path.Combine(folder, "empty.img"), Directory.CreateDirectory(Path.Combine(folder, "disk")).FullName);
        using (var file = File.Create(image)) file.SetLength(ImageMegabytes * 1024L * 1024);
        if (Command.Run("mkfs.ext4", "-q", image) is var (code, says) && code != 0) return $"no file system could be made: {says}";
        if (Command.Run("mount", "-o", "loop", image, disk) is var (mounted, refused) && mounted != 0) return $"an image cannot be mounted here: {refused}";
        Command.Must("umount", disk);
        return null;
    }
}
