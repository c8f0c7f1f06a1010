namespace BuildLog.Data.Lists;

/// <summary>What a spreadsheet is good for.</summary>
public enum ListOf
{
    Parts,
    Offers,
    Costs,
}
