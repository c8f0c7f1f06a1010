using BuildLog.Data.Days;
using BuildLog.Data.Suppliers;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Jobs;

/// <summary>Work given out of the house: sent, promised, back.</summary>
public sealed class OutsideWork : Entered
{
    public OutsideWork(Job job, Supplier to) => (JobId, SupplierId) = (job.Id, to.Id);

    internal OutsideWork() { }

    public long JobId { get; internal set; }

    public long SupplierId { get; internal set; }

    /// <summary>Loaded with the work.</summary>
    public Supplier Supplier { get; internal set; } = null!;

    public string What
    {
        get;
        set => field = value.Trim();
    } = "";

    public DateOnly Sent
    {
        get;
        set => (field, SentAsTyped) = (value, null);
    }

    /// <summary>The same as far as it is known: as it was typed.</summary>
    public LooseDay SentDay
    {
        get => SentAsTyped ?? LooseDay.On(Sent);
        set => (Sent, SentAsTyped) = Reckoning.Reckoned(value, Sent);
    }

    internal LooseDay? SentAsTyped { get; set; }

    public DateOnly? Promised { get; set; }

    /// <summary>Null while it is away.</summary>
    public DateOnly? Back
    {
        get;
        set => (field, BackAsTyped) = (value, null);
    }

    /// <summary>The same as far as it is known: as it was typed.</summary>
    public LooseDay? BackDay
    {
        get => BackAsTyped ?? LooseDay.OnIfAny(Back);
        set => (Back, BackAsTyped) = Reckoning.ReckonedIfAny(value, Back ?? Sent);
    }

    internal LooseDay? BackAsTyped { get; set; }

    /// <summary>Certificate or report that came with it: its number, or where it lies.</summary>
    public string Certificate { get; set; } = "";

    public override void Check()
    {
        TextRules.CheckTitle(What, new Later("work given out"), "balance the propshaft");
        TextRules.CheckDay(Sent, new Later("day it was sent"));
        TextRules.CheckDay(Promised, new Later("promised day"));
        TextRules.CheckDay(Back, new Later("day it came back"));
        TextRules.CheckLine(Certificate, new Later("certificate"), "balance report 1182");
        if (Promised < Sent) throw new RefusedException("promised", Spoken($"'{What}' cannot be promised for {Promised?.InWords()}, before it was sent on {SentDay.InWords}."), "");
        if (Back < Sent) throw new RefusedException("back", Spoken($"'{What}' cannot be back on {BackDay?.InWords}, before it was sent on {SentDay.InWords}."), "");
    }

    public override string ToString() => What;
}
