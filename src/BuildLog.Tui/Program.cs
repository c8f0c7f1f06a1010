using BuildLog.Tui.Sample;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;

var log = new ErrorLog(Path.Combine(Path.GetTempPath(), "buildlog-sample", "errors.log"));
var open = args.Contains("--empty") ? WorkbenchModel.EmptyShop : InventedShop.Workbench();
return WorkbenchStart.Run(new SampleActs(open), log);
