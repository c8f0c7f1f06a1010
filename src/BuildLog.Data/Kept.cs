namespace BuildLog.Data;

/// <summary>Something the record keeps for good.</summary>
public abstract class Kept
{
    /// <summary>Its number in this file; zero until it is stored.</summary>
    public long Id { get; internal set; }

    /// <summary>The same on every machine, whatever file it is carried to.</summary>
    public Guid Uid { get; internal set; } = Guid.CreateVersion7();

    /// <summary>Counts its changes, so that an edit of what somebody else has changed since is noticed.</summary>
    public long Version { get; internal set; }

    /// <summary>What kind of thing it is, as lists of changes and of things found name it; which one says <see cref="object.ToString"/>.</summary>
    internal virtual Later KindInWords => Matters.Of(this).InWords();

    /// <summary>It cannot be without what it names there, although others of its kind name nothing.</summary>
    internal virtual bool HangsOn(string reference) => false;
}

/// <summary>Something a person enters and may correct.</summary>
public abstract class Entered : Kept
{
    /// <exception cref="Gearing.Quantities.RefusedException">What was entered cannot be; nothing is stored.</exception>
    public abstract void Check();
}
