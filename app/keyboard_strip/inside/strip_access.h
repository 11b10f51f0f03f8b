#pragma once
// What a screen reader finds: a list with one child per key. A key's name is its note, its value the verdict in words,
// its one action chooses it.

#include "keyboard/keyboard.h"

namespace hammerline::keyboard_strip {

class KeyboardStrip;

/// Makes the strip known to QAccessible; once is enough, more does no harm.
void installStripAccess();

enum class AccessNews { Focus, Value };
void tellAccess(KeyboardStrip &strip, keyboard::Note note, AccessNews news);

} // namespace hammerline::keyboard_strip
