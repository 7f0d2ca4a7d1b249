#!/bin/sh
# The exit code of 'sinewright run' for every shipped scenario: 1 where a requirement fails on purpose, else 0; 2 for bad input.
# usage: exit_codes.sh SINEWRIGHT SCENARIOS_FOLDER
tool=$1
folder=$2
work=$(mktemp -d) || exit 1
trap 'rm -r "$work"' EXIT
wrong=0

expect() {  # EXPECTED_CODE WHAT ARGUMENTS...
  expected=$1
  what=$2
  shift 2
  "$tool" run "$@" --quiet --out "$work/record.h5" >"$work/output" 2>&1
  code=$?
  if [ "$code" -ne "$expected" ]; then
    echo "$what: exit code $code, expected $expected"
    cat "$work/output"
    wrong=1
  fi
}

count=0
for scenario in "$folder"/*.yaml; do
  case $scenario in
    */fails-on-purpose.yaml) expect 1 "$scenario" "$scenario" ;;
    *) expect 0 "$scenario" "$scenario" ;;
  esac
  count=$((count + 1))
done
[ "$count" -ge 2 ] || { echo "no scenarios in '$folder'"; wrong=1; }

medium=$folder/grasp-medium.yaml
expect 2 "missing file" "$folder/there-is-no-such-scenario.yaml"
expect 2 "wrong unit" "$medium" --set "duration=2 N"
expect 2 "unknown key" "$medium" --set "durration=2 s"
expect 2 "unknown quantity" "$medium" --set "require.0.quantity=grip_forze"
expect 1 "requirement out of reach" "$medium" --set "require.1.at_least=500 N"
expect 3 "a step that cannot be made small enough" "$medium" --set "solver.min_step=5 ms" --set "solver.tolerance=1e-9"
exit $wrong
