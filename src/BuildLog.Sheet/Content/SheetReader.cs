namespace BuildLog.Sheet.Content;

/// <summary>Whom a sheet is printed for; <see cref="BuildSheet"/> says which regions each of them gets.</summary>
public enum SheetReader
{
    /// <summary>Who takes the vehicle over.</summary>
    Buyer,

    /// <summary>Who judges whether it may go on the road.</summary>
    Inspector,

    /// <summary>Who has to know what it is worth and what it is made of.</summary>
    Insurer,

    /// <summary>The shop's own file: everything.</summary>
    Own,
}
