#pragma once
// Gauges that speak for themselves, on a serial line (serial_gauge.h): ASCII, a line a reading. Gauges that type like a
// keyboard need nothing from here: their text arrives in the entry field as a person's does.
//
// A gauge's line is read by a pattern the user may change (gauge_line.h). Bytes become lines in line_joiner.h, which is
// where the two dangers of a cable are met: a line cut in two by unplugging is never taken for a reading, and nothing
// that arrived whole is dropped or taken twice.

#include "gauge_input/gauge_line.h"
#include "gauge_input/serial_gauge.h"
