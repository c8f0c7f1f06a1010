namespace BuildLog.Data.Fitments;

/// <summary>A day and which of its changes: swaps of one day follow each other.</summary>
internal readonly record struct Moment(DateOnly Day, int Order) : IComparable<Moment>
{
    /// <summary>After every change of that day.</summary>
    public static Moment EndOf(DateOnly day) => new(day, int.MaxValue);

    public int CompareTo(Moment other) => (Day, Order).CompareTo((other.Day, other.Order));

    public static bool operator <(Moment a, Moment b) => a.CompareTo(b) < 0;

    public static bool operator >(Moment a, Moment b) => a.CompareTo(b) > 0;

    public static bool operator <=(Moment a, Moment b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Moment a, Moment b) => a.CompareTo(b) >= 0;
}
