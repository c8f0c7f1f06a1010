using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Decisions;
using BuildLog.Data.Identity;
using BuildLog.Data.Notes;
using BuildLog.Data.Plans;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data;

/// <summary>What is written down about things.</summary>
public sealed partial class Shop
{
    /// <summary>The notes about something, the latest first.</summary>
    public IReadOnlyList<Note> NotesOf(Kept about)
        => store.Read(db => db.Set<Note>().Where(note => note.AboutUid == about.Uid).OrderByDescending(note => note.Date).ThenByDescending(note => note.Id).ToList());

    /// <summary>The photos and papers of something, as they were added.</summary>
    public IReadOnlyList<Attachment> AttachmentsOf(Kept about)
        => store.Look(record => AttachmentReader.Of(record, about));

    /// <summary>The numbers read off a vehicle, as they were added.</summary>
    public IReadOnlyList<IdentityNumber> Numbers(Vehicle vehicle)
        => store.Look(record => IdentityReader.Of(record, vehicle));

    /// <summary>The numbers read off a part, as they were added.</summary>
    public IReadOnlyList<IdentityNumber> Numbers(Component component)
        => store.Look(record => IdentityReader.Of(record, component));

    /// <summary>What was decided about a vehicle, the latest first.</summary>
    public IReadOnlyList<Decision> Decisions(Vehicle vehicle) => store.Read(db => db.Set<Decision>()
        .Where(decision => decision.VehicleId == vehicle.Id).OrderByDescending(decision => decision.Date).ThenByDescending(decision => decision.Id).ToList());

    /// <summary>The what-ifs of a vehicle, kept and rejected, the latest first.</summary>
    public IReadOnlyList<Plan> Plans(Vehicle vehicle)
        => store.Read(db => db.Set<Plan>().Where(plan => plan.VehicleId == vehicle.Id).OrderByDescending(plan => plan.Date).ThenByDescending(plan => plan.Id).ToList());

    /// <summary>The road-test log of a vehicle, the latest first.</summary>
    public IReadOnlyList<RoadTest> RoadTests(Vehicle vehicle) => store.Look(record => RoadTestReader.Of(record, vehicle));

    /// <summary>The re-torque register of a vehicle, as it was signed.</summary>
    public IReadOnlyList<Retorque> Retorques(Vehicle vehicle) => store.Look(record => RoadTestReader.RetorquesOf(record, vehicle));

    /// <summary>All deadlines of the shop: the open ones first, each by its day.</summary>
    public IReadOnlyList<Deadline> Deadlines() => store.Look(DeadlineReader.Of);
}
