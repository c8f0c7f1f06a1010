using BuildLog.Data.Tests.Crashes;
using BuildLog.Data.Tests.Rows;

namespace BuildLog.Data.Tests;

/// <summary>Runs the tests, or, when a test asks for it, one of the programs that get killed or starved.</summary>
internal static class EntryPoint
{
    public static async Task<int> Main(string[] args) => args switch
    {
        [Writer.ByHand, var path] => Writer.WriteByHand(path),
        [Writer.ThroughTheShop, var path, var name, var count] => Writer.WriteThroughTheShop(path, name, count),
        [Writer.Changing, var path, var name, var owner] => Writer.Change(path, name, owner),
        [Writer.Holding, var path, var seconds] => Writer.Hold(path, seconds),
        [Writer.Exporting, var path, var zip] => Writer.Export(path, zip),
        [Writer.Importing, var path, var zip] => Writer.Import(path, zip),
        [Writer.Opening, var path] => Writer.Open(path),
        [ReadingWithoutTheMapper.Word, var path] => ReadingWithoutTheMapper.Read(path),
        [FullDisk.Word, var folder] => FullDisk.Fill(folder),
        [LockedStick.Word, var folder] => LockedStick.Look(folder),
        _ when args.Contains("--server") || args.Contains("--internal-msbuild-node")
            => await Xunit.MicrosoftTestingPlatform.TestPlatformTestFramework.RunAsync(args, SelfRegisteredExtensions.AddSelfRegisteredExtensions),
        _ => await Xunit.Runner.InProc.SystemConsole.ConsoleRunner.Run(args),
    };
}
