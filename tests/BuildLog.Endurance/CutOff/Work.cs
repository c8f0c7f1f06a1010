namespace BuildLog.Endurance.CutOff;

/// <summary>What a program is at when it is cut off, by a kill or by the power.</summary>
internal abstract class Work
{
    /// <summary>How the other program is told which it is; people read it too.</summary>
    public abstract string Name { get; }

    /// <summary>How many rounds one folder serves, each finding what the one before left.</summary>
    public virtual int RoundsOfAFolder => 1;

    /// <summary>How many things it may have said before it is cut off, at most; none for work that is done once.</summary>
    public virtual int MostSaid => 0;

    public static IReadOnlyList<string> Names { get; } = [Storing.ByHand, Storing.ThroughTheShop, Migrating.Word, Importing.Word, BackingUp.Word];

    public static Work Called(string name) => name switch
    {
        Storing.ByHand or Storing.ThroughTheShop => new Storing(name),
        Migrating.Word => new Migrating(),
        Importing.Word => new Importing(),
        BackingUp.Word => new BackingUp(),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "There is no such work."),
    };

    /// <summary>Puts into a fresh folder what the work needs.</summary>
    public abstract void Lay(string folder);

    /// <summary>Does it in the other program, which says what is stored; what goes on for ever stops after so many times.</summary>
    public abstract void Do(string folder, int times, Action<string> say);

    /// <summary>What is not as it has to be afterwards, given what was said to be stored.</summary>
    public abstract IEnumerable<string> Troubles(string folder, IReadOnlyList<string> said);
}
