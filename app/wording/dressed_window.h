#pragma once
// The house's stylesheet, worn window by window. With a stylesheet on the whole application, Qt would style every part
// anew each time it moves into a larger one; that was four fifths of building the main window.

class QWidget;

namespace hammerline::wording {

/// The stylesheet of the theme on a window and on all that it owns, dialogs too; now and after each applyTheme. A
/// window is best dressed when it is whole. No theme applied yet: nothing.
void dress(QWidget &window);

} // namespace hammerline::wording
