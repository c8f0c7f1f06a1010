namespace BuildLog.Sheet.Content;

/// <summary>Everything one build sheet says, already worded and rounded by the caller.</summary>
/// <remarks>
/// The sheet computes nothing and reads no clock, file or culture: the same content gives the same bytes.
/// A text that is null or blank prints as "not recorded".
/// </remarks>
public sealed record SheetContent
{
    /// <summary>Identifies this sheet inside the file; the same sheet printed again keeps it.</summary>
    public required Guid Id { get; init; }

    /// <summary>When the sheet was made; goes into the file's properties.</summary>
    public required DateTimeOffset Created { get; init; }

    /// <summary>Decides which regions are printed.</summary>
    public SheetReader Reader { get; init; } = SheetReader.Buyer;

    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>The printed date as the reader sees it, for example "25 November 2026".</summary>
    public string? PrintedOn { get; init; }

    public VehicleTitle Vehicle { get; init; } = new();

    /// <summary>Stands in the title block.</summary>
    public SheetPhoto? TitlePhoto { get; init; }

    public IReadOnlyList<DrivelineRow> Driveline { get; init; } = [];

    public IReadOnlyList<KeyFigure> KeyFigures { get; init; } = [];

    /// <summary>What an insurer asks first: the engine's power, what the vehicle is worth, what was spent on it.</summary>
    public IReadOnlyList<LabelledLine> PowerAndValue { get; init; } = [];

    /// <summary>The cruise goal as one sentence.</summary>
    public string? CruiseGoal { get; init; }

    /// <summary>What all findings come to, in one line; null where nothing was judged.</summary>
    public string? Judged { get; init; }

    public SpeedsTable? Speeds { get; init; }

    public Sawtooth? Sawtooth { get; init; }

    public Pull? Pull { get; init; }

    /// <summary>What the pull cannot be drawn without; null for nothing.</summary>
    public string? PullLacks { get; init; }

    public SpeedometerFacts? Speedometer { get; init; }

    public IReadOnlyList<RunningGearRow> RunningGear { get; init; } = [];

    public IReadOnlyList<PropshaftRow> Propshafts { get; init; } = [];

    public IReadOnlyList<SheetFinding> Findings { get; init; } = [];

    /// <summary>What each part alone may be for the goals to be met, a line each.</summary>
    public IReadOnlyList<string> PartWindows { get; init; } = [];

    /// <summary>Which axles meet the goals with which tyres; null where it cannot be said.</summary>
    public RegionMap? AxleAndTyre { get; init; }

    /// <summary>What is fitted beside other parts; null where nobody asked for it: then there is no such section.</summary>
    public ComparedOptions? Options { get; init; }

    public IReadOnlyList<EvidenceEntry> Evidence { get; init; } = [];

    public IReadOnlyList<HistoryRow> History { get; init; } = [];

    /// <summary>Without any, and without bolts tightened again, there is no such section.</summary>
    public IReadOnlyList<RoadTestRow> RoadTests { get; init; } = [];

    public IReadOnlyList<TightenedRow> Tightened { get; init; } = [];

    /// <summary>Null where nobody asked for hours: then there is no such section.</summary>
    public WorkDone? Work { get; init; }

    /// <summary>Null where nobody asked for costs: then there is no such section.</summary>
    public MoneySpent? Costs { get; init; }

    /// <summary>In the order to print; without any there is no such section.</summary>
    public IReadOnlyList<SheetPhoto> Photos { get; init; } = [];

    /// <summary>What does not fit and has not been put right.</summary>
    public IReadOnlyList<string> Defects { get; init; } = [];

    /// <summary>What could not be said yet.</summary>
    public IReadOnlyList<string> OpenPoints { get; init; } = [];

    /// <summary>What the shop still has to do before the vehicle is handed over.</summary>
    public IReadOnlyList<string> ToDo { get; init; } = [];

    /// <summary>Work that is open beside that, and what was given out and is not back.</summary>
    public IReadOnlyList<string> Unfinished { get; init; } = [];

    /// <summary>What is too near a limit to be sure of, or against common practice.</summary>
    public IReadOnlyList<string> Watched { get; init; } = [];

    /// <summary>What rests on a word, a tag or a guess.</summary>
    public IReadOnlyList<string> Assumptions { get; init; } = [];

    public IReadOnlyList<string> Cautions { get; init; } = [StandingCaution.LocalRulesComeFirst];

    public IReadOnlyList<SignatureLine> Signatures { get; init; } = [new(Spoken("Built and measured by")), new(Spoken("Received by"))];
}
