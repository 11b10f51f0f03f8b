#!/usr/bin/env bash
# A rule that cannot fail is none: plants one fault a rule into a small copy of the house and insists that it is found.
# Usage: planted_faults.sh RULES_SCRIPT HOUSE_CMAKE
set -euo pipefail
rules=$1 house=$2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
missed=0

fresh_house() {
  rm -rf "$work/tree"
  mkdir -p "$work/tree"/{core/units/inside,core/keyboard,core/logbook,core/exchange,app/bench,tests/core/units,packaging,resources}
  cp "$house" "$work/tree/core/house.cmake"
  local room
  for room in core/units core/keyboard core/logbook core/exchange app/bench; do
    printf '#pragma once\n' > "$work/tree/$room/$(basename "$room").h"
    touch "$work/tree/$room/CMakeLists.txt"
  done
  printf '#pragma once\n' > "$work/tree/core/units/inside/secret.h"
  printf 'int t;\n' > "$work/tree/tests/core/units/units_test.cpp"
  printf 'hammerline_core_test(units SOURCES units_test.cpp)\n' > "$work/tree/tests/core/units/CMakeLists.txt"
}
must_find() { # must_find RULE-WORD WHAT FILE CONTENT
  fresh_house
  mkdir -p "$(dirname "$work/tree/$3")"
  printf '%b' "$4" > "$work/tree/$3"
  local found
  found=$(bash "$rules" "$work/tree") || true
  if grep -q "^$1:" <<< "$found"; then printf 'found   %s\n' "$2"; else printf 'MISSED  %s\n' "$2"; missed=1; fi
}

fresh_house
bash "$rules" "$work/tree" || { echo "the clean house is called faulty"; exit 1; }

must_find arrow 'an arrow that points up' core/units/up.cpp '#include "keyboard/keyboard.h"\n'
must_find arrow 'an arrow that points sideways' core/logbook/aside.cpp '#include "exchange/exchange.h"\n'
must_find arrow 'core that sees the app' core/units/app.cpp '#include "bench/bench.h"\n'
must_find inside "another room's private header" core/keyboard/peek.cpp '#include "units/inside/secret.h"\n'
must_find qt 'Qt in core' core/units/qt.cpp '#include <QString>\n'
must_find sql 'sqlite3.h outside the logbook' core/exchange/db.cpp '#include <sqlite3.h>\n'
must_find sql "Qt's SQL module" app/bench/db.cpp '#include <QSqlDatabase>\n'
must_find sql 'a statement in the app' app/bench/query.cpp 'auto s = "SELECT 1";\n'
must_find name 'one name twice' core/keyboard/units.h '#pragma once\n'
must_find door 'a room without a front door' core/instrument/CMakeLists.txt 'hammerline_room(instrument)\n'
must_find door 'a room on no floor' core/attic/CMakeLists.txt 'x\n'
must_find test 'a test that is not built' tests/core/units/lost_test.cpp 'int x;\n'
must_find long 'a file over 400 lines' core/units/long.cpp "$(printf 'int x%d;\\n' $(seq 401))"
must_find long 'a function over 60 lines' core/units/fn.cpp "int f()\n{\n$(printf 'g(%d);\\n' $(seq 61))return 0;\n}\n"
must_find open 'something left open' core/units/left.cpp '// TO''DO later\n'
must_find open 'a test that tests nothing' tests/core/units/units_test.cpp 'EXPECT_TRUE''(true);\n'
must_find clock 'a clock asked in core' core/units/now.cpp 'auto t = std::chrono::system_clock::now();\n'
must_find header 'a header without its guard' core/units/bare.h 'int x;\n'
exit "$missed"
