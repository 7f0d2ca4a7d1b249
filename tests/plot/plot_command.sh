#!/bin/sh
# What 'sinewright plot' answers to good and bad input.
# usage: plot_command.sh SINEWRIGHT SCENARIOS_FOLDER
tool=$1
scenario=$2/grasp-medium.yaml
work=$(mktemp -d) || exit 1
trap 'rm -r "$work"' EXIT
wrong=0
tool_path=$PATH

fault() {
  echo "$1"
  cat "$work/output"
  wrong=1
}

expect() {  # EXPECTED_CODE WORDS WHAT ARGUMENTS...
  expected=$1
  words=$2
  what=$3
  shift 3
  env PATH="$tool_path" "$tool" plot "$@" >"$work/output" 2>&1
  code=$?
  [ "$code" -eq "$expected" ] || fault "$what: exit code $code, expected $expected"
  grep -q -e "$words" "$work/output" || fault "$what: nothing about '$words'"
}

"$tool" run "$scenario" --set "duration=0.2 s" --set "timeline.1.at=0.18 s" --set "require=[]" --quiet --out "$work/run.h5"
[ -s "$work/run.h5" ] || { echo "no record to plot"; exit 1; }
echo "no record" >"$work/foreign.h5"

expect 2 "missing.h5" "missing record" "$work/missing.h5"
expect 2 "foreign.h5" "foreign record" "$work/foreign.h5"
expect 2 "jpeg" "unknown format" "$work/run.h5" --format jpeg
expect 2 "0.2 s" "a stretch beyond the record" "$work/run.h5" --from "3 s" --out "$work/none"
expect 2 "a time" "a stretch that is no time" "$work/run.h5" --from "3 N" --out "$work/none"
expect 2 "cannot be made" "a file where the folder should be" "$work/run.h5" --out "$work/foreign.h5"
[ ! -e "$work/none" ] || fault "bad input left a folder behind"

tool_path=$work
expect 2 "apt-get install gnuplot-nox" "gnuplot is missing" "$work/run.h5" --out "$work/without"
tool_path=$PATH

expect 0 "posture.png" "default folder" "$work/run.h5" --format png
[ -s "$work/run/posture.png" ] || fault "the default folder is not the record's name without .h5"
[ ! -e "$work/run/posture.pdf" ] || fault "a format was drawn that nobody asked for"

cat >"$work/study.yaml" <<EOD
sinewright: study
name: two gears
runs:
  grasp: {scenario: $scenario, change: ["duration=0.2 s", "timeline.1.at=0.18 s", "require=[]"]}
vary:
  gear: {key: model.drives.flexor.gearhead, values: [train_100, train_150]}
outcomes: [grasp.peak_current.flexor]
grid: {}
EOD
"$tool" study "$work/study.yaml" --quiet --out "$work/two.study.h5" || fault "no table to plot"
expect 0 "two.study/response.png" "the table of a study" "$work/two.study.h5" --format png
expect 2 "cannot be laid over" "a table among runs" "$work/run.h5" "$work/two.study.h5" --out "$work/none"
expect 2 "no stretch of time" "a stretch of time of a table" "$work/two.study.h5" --from "0 s" --out "$work/none"
[ ! -e "$work/none" ] || fault "bad input left a folder behind"

"$tool" plot "$work/run.h5" --out "$work/quiet" --format svg --quiet >"$work/output" 2>&1 || fault "--quiet: exit code"
[ ! -s "$work/output" ] || fault "--quiet prints"

"$tool" plot "$work/run.h5" --out "$work/json" --format svg --json >"$work/output" 2>&1 || fault "--json: exit code"
files=$(sed -n 's/^ *"\(.*\)",*$/\1/p' "$work/output" | grep -v '"files"')
count=0
for file in $files; do
  [ -s "$file" ] || fault "--json lists '$file', which is not there"
  count=$((count + 1))
done
[ "$count" -eq "$(ls "$work/json" | wc -l)" ] && [ "$count" -ge 14 ] || fault "--json lists $count files"
exit $wrong
