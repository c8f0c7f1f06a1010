namespace BuildLog.Data.Days;

/// <summary>An entry about what was on a day, as far as anybody knows which.</summary>
public abstract class Dated : Entered
{
    /// <summary>The day it is reckoned on, for order, sums and what was fitted then; setting it says that it is known.</summary>
    public DateOnly Date
    {
        get;
        set => (field, DateAsTyped) = (value, null);
    }

    /// <summary>The same as far as it is known: as it was typed.</summary>
    public LooseDay Day
    {
        get => DateAsTyped ?? LooseDay.On(Date);
        set => (Date, DateAsTyped) = Reckoning.Reckoned(value, Date);
    }

    /// <summary>Null where the day is known.</summary>
    internal LooseDay? DateAsTyped { get; set; }
}
