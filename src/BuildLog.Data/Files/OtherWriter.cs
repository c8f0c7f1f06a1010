namespace BuildLog.Data.Files;

/// <summary>Another program that has been writing to the file for longer than a change waits by itself.</summary>
/// <param name="Path">The file.</param>
/// <param name="Waited">For how long so far.</param>
public sealed record OtherWriter(string Path, TimeSpan Waited)
{
    /// <summary>What to tell whoever waits.</summary>
    public override string ToString() => Spoken($"Waiting, {Waited.TotalSeconds:0} s so far: another program is writing to {Path}. What was entered is kept meanwhile.");
}
