using BuildLog.Data;
using BuildLog.Data.Attachments;
using BuildLog.Data.Costs;
using BuildLog.Data.Identity;
using BuildLog.Data.Jobs;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Vehicles;

namespace BuildLog.Tui.Sheets;

/// <summary>What the shop keeps of a vehicle beside its driveline, read once for its papers: work, money, numbers, road tests, photos.</summary>
public sealed record VehicleFolder
{
    /// <summary>What the shop calls itself; empty where it has not said.</summary>
    public string ShopName { get; init; } = "";

    public IReadOnlyList<Job> Jobs { get; init; } = [];

    /// <summary>Given out, and not back yet.</summary>
    public IReadOnlyList<OutsideWork> Away { get; init; } = [];

    /// <summary>The latest first.</summary>
    public IReadOnlyList<WorkEntry> Hours { get; init; } = [];

    /// <summary>The latest first.</summary>
    public IReadOnlyList<Cost> Costs { get; init; } = [];

    /// <summary>Read off the vehicle and off the parts that are on it.</summary>
    public IReadOnlyList<IdentityNumber> Numbers { get; init; } = [];

    /// <summary>The latest first.</summary>
    public IReadOnlyList<RoadTest> RoadTests { get; init; } = [];

    public IReadOnlyList<Retorque> Retorques { get; init; } = [];

    /// <summary>Of the vehicle, its jobs and every part that was ever on it.</summary>
    public IReadOnlyList<Attachment> Attachments { get; init; } = [];

    /// <summary>Where the files of the attachments lie.</summary>
    public required AttachmentStore Files { get; init; }

    public static VehicleFolder Read(Shop shop, Vehicle vehicle)
    {
        var jobs = shop.Jobs(vehicle);
        var fitments = shop.Fitments(vehicle);
        var parts = fitments.Select(fitment => fitment.Component).DistinctBy(part => part.Uid).ToList();
        var fitted = fitments.Where(fitment => fitment.To is null).Select(fitment => fitment.Component);
        return new()
        {
            ShopName = shop.Workshop().Name,
            Jobs = jobs,
            Away = [.. shop.OutsideWork(vehicle).Where(work => work.Back is null)],
            Hours = shop.Hours(vehicle),
            Costs = shop.Costs(vehicle),
            Numbers = [.. shop.Numbers(vehicle), .. fitted.SelectMany(shop.Numbers)],
            RoadTests = shop.RoadTests(vehicle),
            Retorques = shop.Retorques(vehicle),
            Attachments = [.. shop.AttachmentsOf(vehicle), .. jobs.SelectMany(shop.AttachmentsOf), .. parts.SelectMany(shop.AttachmentsOf)],
            Files = AttachmentStore.Beside(shop.Path),
        };
    }
}
