#!/usr/bin/env bash
# The program as one file for machines without .NET, with licences, bill of materials, man page, completions and checksums.
#   packaging/single-files.sh OUT [RID ...]      linux-x64 linux-arm64 win-x64 osx-arm64 osx-x64, or those named
# Needs the SDK of global.json and tar; each RID takes a minute and some 50 MB. Ends with 1 if one of them could not be made.
set -euo pipefail
cd "$(dirname "$0")/.."

out=${1:?Name the folder to write to, such as artifacts/packages}
shift
rids=("$@")
[ ${#rids[@]} -gt 0 ] || rids=(linux-x64 linux-arm64 win-x64 osx-arm64 osx-x64)
version=$(sed -n 's:.*<Version>\(.*\)</Version>.*:\1:p' Directory.Build.props)
mkdir -p "$out"
out=$(cd "$out" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

echo "What goes with every one"
dotnet build src/BuildLog.Tui -c Release -v q
buildlog() { dotnet exec src/BuildLog.Tui/bin/Release/net10.0/buildlog.dll "$@"; }
mkdir -p "$work/common/completions"
cp LICENSE packaging/archive/README.md "$work/common"
buildlog man > "$work/common/buildlog.1"
buildlog completion bash > "$work/common/completions/buildlog"
buildlog completion zsh > "$work/common/completions/_buildlog"
buildlog completion fish > "$work/common/completions/buildlog.fish"
buildlog completion powershell > "$work/common/completions/buildlog.ps1"

failed=()
for rid in "${rids[@]}"; do
    echo "$rid"
    name=buildlog-$version-$rid
    if ! dotnet publish src/BuildLog.Tui -c Release -r "$rid" --self-contained -v q -o "$work/$rid" \
        -p:PublishSingleFile=true -p:IncludeNativeLibrariesForSelfExtract=true -p:DebugType=none; then
        failed+=("$rid")
        continue
    fi
    mkdir "$work/$name"
    cp -R "$work/common/." "$work/$name"
    case $rid in win-*) cp "$work/$rid/buildlog.exe" "$work/$name" ;; *) cp "$work/$rid/buildlog" "$work/$name" ;; esac
    # The runtime is inside the file, so it is in its bill of materials, and its licence goes with it.
    runtime=$(find "${NUGET_PACKAGES:-$HOME/.nuget/packages}/microsoft.netcore.app.runtime.$rid" -maxdepth 1 -mindepth 1 | sort -V | tail -n 1)
    dotnet run packaging/inventory.cs -- src/BuildLog.Tui/packages.lock.json "$version" "$work/$name" "$runtime"
    tar -czf "$out/$name.tar.gz" -C "$work" "$name"
done

(cd "$out" && sha256sum buildlog-"$version"-*.tar.gz > SHA256SUMS)
[ ${#failed[@]} -eq 0 ] || { echo "Not made: ${failed[*]}" >&2; exit 1; }
