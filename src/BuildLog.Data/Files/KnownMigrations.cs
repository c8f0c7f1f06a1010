namespace BuildLog.Data.Files;

/// <summary>The schema's steps, written out so that a file can be checked without loading the object mapper; a test holds it to the migrations.</summary>
internal static class KnownMigrations
{
    public static readonly IReadOnlyList<string> Ids =
    [
        "20261125180654_FirstRecord",
        "20261125193628_WholeMarriage",
        "20261125221700_MonthsOfSwaps",
        "20261125225032_ChangesAndSearch",
        "20261126014805_LooseDays",
        "20261126125048_FrontTyresAndLowStep",
        "20261126152312_ReadingsOfEverySession",
        "20261127015828_PartsThatAreGone",
        "20261127171200_WhatTheVehicleIs",
        "20261128022340_HuntedForAPlan",
        "20261128074247_AsFarAsKnown",
    ];
}
