using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Decisions;
using BuildLog.Data.Donors;
using BuildLog.Data.Fitments;
using BuildLog.Data.Goals;
using BuildLog.Data.Hunting;
using BuildLog.Data.Identity;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.Plans;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Sessions;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;

namespace BuildLog.Data;

/// <summary>What a kept thing is, whichever of its kinds: what notes and attachments are about.</summary>
public enum Matter
{
    Vehicle,
    Component,
    Fitment,
    OdometerChange,
    Session,
    Goal,
    IdentityNumber,
    Job,
    WorkEntry,
    OutsideWork,
    Cost,
    Supplier,
    Donor,
    DonorPiece,
    WantedPart,
    Offer,
    Plan,
    RoadTest,
    Retorque,
    Deadline,
    Decision,
    Note,
    Attachment,
    Workshop,
}

public static class Matters
{
    // The class that all things of a matter have in common, and the word for it.
    private static readonly Dictionary<Matter, (Type Type, Later Words)> Known = new()
    {
        [Matter.Vehicle] = (typeof(Vehicle), new Later("vehicle")),
        [Matter.Component] = (typeof(Component), new Later("part")),
        [Matter.Fitment] = (typeof(Fitment), new Later("fitment")),
        [Matter.OdometerChange] = (typeof(OdometerChange), new Later("odometer change")),
        [Matter.Session] = (typeof(Session), new Later("session")),
        [Matter.Goal] = (typeof(GoalEntry), new Later("goal")),
        [Matter.IdentityNumber] = (typeof(IdentityNumber), new Later("identity number")),
        [Matter.Job] = (typeof(Job), new Later("job")),
        [Matter.WorkEntry] = (typeof(WorkEntry), new Later("work")),
        [Matter.OutsideWork] = (typeof(OutsideWork), new Later("work given out")),
        [Matter.Cost] = (typeof(Cost), new Later("cost")),
        [Matter.Supplier] = (typeof(Supplier), new Later("supplier")),
        [Matter.Donor] = (typeof(Donor), new Later("donor")),
        [Matter.DonorPiece] = (typeof(DonorPiece), new Later("piece of a donor")),
        [Matter.WantedPart] = (typeof(WantedPart), new Later("wanted part")),
        [Matter.Offer] = (typeof(Offer), new Later("offer")),
        [Matter.Plan] = (typeof(Plan), new Later("plan")),
        [Matter.RoadTest] = (typeof(RoadTest), new Later("road test")),
        [Matter.Retorque] = (typeof(Retorque), new Later("re-torque")),
        [Matter.Deadline] = (typeof(Deadline), new Later("deadline")),
        [Matter.Decision] = (typeof(Decision), new Later("decision")),
        [Matter.Note] = (typeof(Note), new Later("note")),
        [Matter.Attachment] = (typeof(Attachment), new Later("attachment")),
        [Matter.Workshop] = (typeof(Workshop), new Later("shop")),
    };

    public static Matter Of(Kept kept) => Of(kept.GetType());

    public static Later InWords(this Matter matter) => Known[matter].Words;

    /// <summary>The class that all things of this matter have in common.</summary>
    internal static Type TypeOf(Matter matter) => Known[matter].Type;

    internal static Matter Of(Type type) => Known.First(known => known.Value.Type.IsAssignableFrom(type)).Key;
}
