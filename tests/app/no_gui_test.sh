#!/usr/bin/env bash
# Every command but `record`, which lays out pages and so needs Qt's fonts, does its work without Qt's GUI: with a
# platform that Qt does not have, whatever started it would end the process with a signal.
# usage: no_gui_test.sh HAMMERLINE SAMPLE-DATA
set -u
program=$(realpath "$1") samples=$(realpath "$2") here=$(realpath "$0")
export QT_QPA_PLATFORM=none-such DISPLAY= WAYLAND_DISPLAY=
folder=$(mktemp -d) && trap 'rm -rf "$folder"' EXIT
export HOME=$folder XDG_DATA_HOME=$folder XDG_CONFIG_HOME=$folder
failed=0
# Expects exit status $1 of the command that follows.
expect() {
  local wanted=$1; shift
  "$program" "$@" >"$folder/out" 2>"$folder/err"
  local status=$?
  [ $status = "$wanted" ] && return
  echo "hammerline $*: ended with $status, not $wanted"; cat "$folder/err"
  failed=1
}
found=$samples/readings/quillerby-131-as-found.csv left=$samples/readings/quillerby-131-as-left.csv
cd "$folder" || exit 2
expect 0 tolerances
expect 0 setups
expect 1 check "$found" --tolerances full-upright
expect 0 plan "$found" --tolerances full-upright --setup full-upright
expect 0 fit "$left" --tolerances full-upright
expect 0 compare "$found" "$left" --action vertical
expect 0 gauge-study "$samples/trials/let-off-gauge.csv"
expect 0 spot-check --notes 88 --sample 20 --found 0
expect 0 demo shop.hammerline
expect 0 instruments shop.hammerline
expect 0 passes shop.hammerline --instrument 1
expect 0 import shop.hammerline --instrument 1 --purpose recheck "$left"
expect 0 export shop.hammerline --instrument 1 --to readings.csv
expect 0 review shop.hammerline
expect 0 rejudge shop.hammerline --tolerances full-upright
expect 0 hand-over shop.hammerline --instrument 1 --to piano.json
expect 0 take-over other.hammerline piano.json --new
expect 0 backup shop.hammerline --to copy.hammerline
expect 0 verify shop.hammerline
expect 0 record shop.hammerline --instrument 1 --to record.pdf
expect 0 verify record.pdf
# All there are, but for new ones that nobody listed here.
for name in $("$program" --help | sed -n 's/^hammerline \([a-z-]*\)  .*/\1/p'); do
  grep -q "^expect [01] $name\b" "$here" || { echo "$name is not tried here"; failed=1; }
done
exit $failed
