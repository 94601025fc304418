#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Makes the pictures of the README from the real program on the demo yard: resources/pictures/window.png and window-dark.png.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
program=${1:-build/release/winterlarder}
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
QT_QPA_PLATFORM=offscreen "$program" --pictures "$folder" >/dev/null
mkdir -p resources/pictures
cp "$folder/window-light.png" resources/pictures/window.png
cp "$folder/window-dark.png" resources/pictures/window-dark.png
cp "$folder/yard-light.png" resources/pictures/yard.png
ls -l resources/pictures
