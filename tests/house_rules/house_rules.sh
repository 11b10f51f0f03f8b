#!/usr/bin/env bash
# The house rules that no compiler checks. Usage: house_rules.sh TREE
# Prints one line a fault, `rule: file[:line]: what`, and ends with 1 where there is one. planted_faults.sh shows that each rule bites.
set -uo pipefail
cd "$1" || exit 2
faults=0
fault() { printf '%s\n' "$1"; faults=$((faults + 1)); }
sources() { find "$@" -type f \( -name '*.h' -o -name '*.cpp' \) 2>/dev/null | sort; }

# Floors as core/house.cmake has them: "room floor" a line, core and app alike.
floors() {
  awk '/^set\(HOUSE_(CORE|APP)_FLOORS/ { inside = 1; next }
       inside { line = $0; last = line ~ /\)/; gsub(/[) ]/, "", line)
                if (line != "") { n++; m = split(line, rooms, "+"); for (i = 1; i <= m; i++) print rooms[i], n }
                if (last) inside = 0 }' core/house.cmake
}
declare -A floor_of
while read -r room floor; do floor_of[$room]=$floor; done < <(floors)
room_of() { local rest=${1#*/}; printf '%s' "${rest%%/*}"; }

rule_arrows_point_down() {
  local file line text room target
  while IFS=: read -r file line text; do
    room=$(room_of "$file")
    target=${text#*\"}; target=${target%%/*}
    [ -n "${floor_of[$target]:-}" ] || continue
    [ -n "${floor_of[$room]:-}" ] || continue # app/main.cpp stands above every floor
    [ "$target" = "$room" ] || [ "${floor_of[$target]}" -lt "${floor_of[$room]}" ] ||
      fault "arrow: $file:$line: $room must not see $target"
    case $text in *"\"$target/inside/"*) [ "$target" = "$room" ] || fault "inside: $file:$line: private header of $target" ;; esac
  done < <(grep -nE '^ *#include "[a-z_]+/' $(sources core app) /dev/null)
}
rule_core_knows_no_qt() {
  while read -r hit; do fault "qt: $hit: Qt in core"; done < <(grep -rnE '#include *[<"](Q[A-Z]|Qt)' core --include=*.h --include=*.cpp | cut -d: -f1,2)
}
rule_sql_stays_in_the_logbook() {
  while read -r hit; do fault "sql: $hit: sqlite3.h outside core/logbook"; done \
    < <(grep -rnE '#include *[<"]sqlite3' core app --include=*.h --include=*.cpp | grep -v '^core/logbook/' | cut -d: -f1,2)
  while read -r hit; do fault "sql: $hit: Qt's SQL module"; done < <(grep -rnE 'QtSql|QSql' core app --include=*.h --include=*.cpp | cut -d: -f1,2)
  while read -r hit; do fault "sql: $hit: an SQL statement in the app"; done \
    < <(grep -rnE '"(SELECT|INSERT INTO|UPDATE|DELETE FROM|PRAGMA) ' app --include=*.h --include=*.cpp | cut -d: -f1,2)
}
rule_names_are_unique() {
  while read -r name; do fault "name: $name stands in two places"; done < <(sources core app tests | sed 's#.*/##' | sort | uniq -d)
}
rule_every_room_has_its_front_door() {
  local room
  for room in core/*/ app/*/; do
    [ -f "$room/CMakeLists.txt" ] || continue
    [ -f "$room$(basename "$room").h" ] || fault "door: $room has no $(basename "$room").h"
    [ -n "${floor_of[$(basename "$room")]:-}" ] || fault "door: $room stands on no floor"
  done
}
rule_every_test_is_built() {
  local file
  while read -r file; do
    grep -qE "(^|[^a-z_])$(basename "$file")" "$(dirname "$file")/CMakeLists.txt" 2>/dev/null || fault "test: $file is in no target"
  done < <(find tests -name '*_test.cpp' | sort)
}
rule_files_stay_short() {
  local file lines
  while read -r file; do
    lines=$(wc -l < "$file")
    [ "$lines" -le 400 ] || fault "long: $file has $lines lines, 400 is the stop"
  done < <(sources core app tests)
}
rule_functions_stay_short() {
  while read -r hit; do fault "long: $hit"; done < <(
    sources core app | ctags -L - -f - --languages=C++ --kinds-C++=f --fields=+ne 2>/dev/null |
      awk -F'\t' '{ line = 0; end = 0
                    for (i = 4; i <= NF; i++) { if ($i ~ /^line:/) line = substr($i, 6); if ($i ~ /^end:/) end = substr($i, 5) }
                    if (end - line + 1 > 60) printf "%s:%d: %s has %d lines, 60 is the stop\n", $2, line, $1, end - line + 1 }')
}
rule_nothing_is_left_open() {
  while read -r hit; do fault "open: $hit: left open"; done \
    < <(grep -rnwE 'TODO|FIXME|XXX|HACK' core app packaging resources tests --include=*.h --include=*.cpp --include=*.cmake --include=*.json --include=*.txt | cut -d: -f1,2)
  while read -r hit; do fault "open: $hit: a test that tests nothing"; done \
    < <(grep -rnE 'EXPECT_TRUE\(true\)|GTEST_SKIP|DISABLED_' tests --include=*.cpp --include=*.h | cut -d: -f1,2)
}
rule_core_asks_no_clock_and_prints_nothing() {
  while read -r hit; do fault "clock: $hit: a lower room asks the clock or prints"; done \
    < <(grep -rnE 'system_clock::now|steady_clock::now|std::time\(|std::c(out|err)\b|\bprintf\(|random_device' core --include=*.h --include=*.cpp | cut -d: -f1,2)
}
rule_headers_open_with_pragma_once() {
  local file
  while read -r file; do
    case $file in *.h) [ "$(head -n 1 "$file")" = '#pragma once' ] || fault "header: $file does not open with #pragma once" ;; esac
  done < <(sources core app tests)
}

for rule in $(declare -F | awk '$3 ~ /^rule_/ { print $3 }'); do "$rule"; done
[ "$faults" -eq 0 ]
