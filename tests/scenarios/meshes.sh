#!/usr/bin/env bash
# Makes the STL files of models/meshes anew and compares: meshes.sh PYTHON FOLDER
set -euo pipefail
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
"$1" -B "$2/make_meshes.py" "$made"
for file in "$2"/*.stl; do cmp "$file" "$made/$(basename "$file")"; done
for file in "$made"/*.stl; do test -e "$2/$(basename "$file")"; done
