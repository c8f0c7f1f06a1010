using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;

namespace BuildLog.Data.Donors;

/// <summary>Where a piece of a donor has gone.</summary>
public enum PieceState
{
    Remains,
    Taken,
    Sold,
    Scrapped,
}

public static class PieceStateWords
{
    public static string InWords(this PieceState state) => state switch
    {
        PieceState.Remains => Spoken("remains"),
        PieceState.Taken => Spoken("taken"),
        PieceState.Sold => Spoken("sold"),
        PieceState.Scrapped => Spoken("scrapped"),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "No such state."),
    };
}

/// <summary>One thing on a donor: still there, taken, sold or scrapped.</summary>
public sealed class DonorPiece : Entered
{
    public DonorPiece(Donor donor) => DonorId = donor.Id;

    private DonorPiece() { }

    public long DonorId { get; internal set; }

    public string What
    {
        get;
        set => field = value.Trim();
    } = "";

    public PieceState State { get; set; }

    /// <summary>When it went.</summary>
    public LooseDay? Day { get; set; }

    /// <summary>The part it is in the record.</summary>
    public long? ComponentId { get; set; }

    /// <summary>Loaded with the piece.</summary>
    public Component? Component { get; internal set; }

    /// <summary>What it brought in.</summary>
    public Money? Income { get; set; }

    public override void Check() => TextRules.CheckTitle(What, new Later("piece of the donor"), "gearbox with bellhousing");

    public override string ToString() => What;
}
