#pragma once
// What a screen reader finds: a list with one child per key. A key's name is its note, its value the verdict in words,
// its one action chooses it.

#include "keyboard/keyboard.h"

class QAccessibleEvent;

namespace hammerline::keyboard_strip {

class KeyboardStrip;

/// Makes the strip known to QAccessible; once is enough, more does no harm.
void installStripAccess();

enum class AccessNews { Current, Value }; ///< another key is current; a key shows another value
void tellAccess(KeyboardStrip &strip, keyboard::Note note, AccessNews news);
/// Takes what is told from now on in the place of the system's readers, which tests have none of; null: theirs again.
using AccessListener = void (*)(QAccessibleEvent &);
void listenInstead(AccessListener listener);

} // namespace hammerline::keyboard_strip
