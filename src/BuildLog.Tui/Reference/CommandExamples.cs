namespace BuildLog.Tui.Reference;

/// <summary>One line, or a few, for each command, as they would be typed after <c>buildlog</c>. A test runs every one.</summary>
internal static class CommandExamples
{
    private static readonly Dictionary<string, string[]> ByCommand = new(StringComparer.Ordinal)
    {
        [""] = ["--demo"],
        ["axle"] = ["axle --turns 10:23.7 --wheels one-held --tag 3.90", "axle --turns 10:20.5 --turns 20:41 --wheels together", "axle --turns 10,10:41", "axle --teeth 41/10", "axle --teeth 39/6 --two-speed \"planetary 46/18\""],
        ["gearbox"] = ["gearbox --turns 10:30.1 --listed 2.97,3.01", "gearbox --teeth \"planetary 75/30 75/33\" --ratios 2.31,1.40,1.00 --reverse 2.27"],
        ["rollout"] = ["rollout --roll 1:2040mm --roll 3:6125mm --loaded no"],
        ["tyre"] = ["tyre \"205/65R15 94H\"", "tyre 31x10.50R15LT --worn 4mm"],
        ["speed"] = ["speed --rpm 2300 --speed \"110 km/h\" --gear 0.82 --tyre 205/65R15", "speed --rpm 3000 --gear 1 --axle 4.08±0.03 --circumference 2.04m"],
        ["vehicles"] = ["vehicles --demo"],
        ["parts"] = ["parts --demo"],
        ["findings"] = ["findings Brindle --demo", "findings Brindle --on 2024-06-01 --demo"],
        ["options"] = ["options Brindle --pool owned,offered --top 5 --demo", "options Brindle --pool owned --change axle --demo"],
        ["what-if"] = ["what-if Brindle --set axle=3.36 --demo", "what-if Brindle --set axle=37/11 --set \"cruise=110 km/h at 2600 rpm\" --keep \"longer axle\" --demo"],
        ["plans"] = ["plans Brindle --demo"],
        ["wanted"] = ["wanted Brindle --demo"],
        ["card"] = ["card Brindle --demo", "card Haldor --for front-axle --demo", "card Brindle --for gearbox --demo", "card Tansy --for tyres --demo", "card Brindle --out axle-card.pdf --paper a6 --demo"],
        ["history"] = ["history Tansy --demo"],
        ["sheet"] = ["sheet Brindle --for buyer --out brindle.pdf --demo", "sheet Brindle --preview --demo"],
        ["paper"] = ["paper order Ottery --out propshaft.pdf --demo"],
        ["paper order"] = ["paper order Ottery --out propshaft.pdf --demo"],
        ["paper compare"] = ["paper compare Brindle --with axle,tyre-up --map --demo", "paper compare Brindle --with 1,2,3 --out compared.pdf --demo"],
        ["paper session"] = ["paper session Brindle --out count.pdf --demo"],
        ["paper time"] = ["paper time Brindle --out hours.pdf --demo", "paper time Brindle --from 2024-11-01 --out hours.csv --demo"],
        ["paper costs"] = ["paper costs Brindle --out costs.pdf --demo"],
        ["paper labels"] = ["paper labels --out labels.pdf --demo"],
        ["attach"] = ["attach costs.pdf --to Brindle --what receipt --caption \"receipts so far\" --demo"],
        ["attachments"] = ["attachments Brindle --demo"],
        ["handover"] = ["handover Tansy --out tansy-handover.zip --demo"],
        ["csv"] = ["csv costs --vehicle Brindle --out costs.csv --demo"],
        ["export"] = ["export shop.zip --demo", "export tansy.zip --vehicle Tansy --demo"],
        ["import"] = ["import shop.zip --dry-run --demo", "import shop.zip --demo"],
        ["backup"] = ["backup shop-copy.db --demo"],
        ["restore"] = ["restore shop-copy.db --database shop.db"],
        ["check-database"] = ["check-database --demo"],
        ["find"] = ["find \"pinion chip\" --demo"],
        ["changes"] = ["changes Brindle --demo"],
        ["undo"] = ["undo --database shop.db"],
        ["redo"] = ["redo --database shop.db"],
        ["completion"] = ["completion bash"],
        ["man"] = ["man"],
    };

    /// <summary>The lines of a command; none where it has none yet.</summary>
    public static IReadOnlyList<string> Of(string command) => [.. ByCommand.GetValueOrDefault(command, []).Select(line => $"buildlog {line}")];

    /// <summary>Every command that has a line.</summary>
    public static IEnumerable<string> Commands => ByCommand.Keys;
}
