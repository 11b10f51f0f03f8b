#pragma once
// The strip as a drawing: on the screen and, in black alone, on paper. Vector all through.

#include "keyboard_strip/strip_geometry.h"
#include "keyboard_strip/strip_model.h"
#include "wording/palette.h"

#include <QFont>
#include <QRectF>

#include <optional>

class QPainter;
class QWidget;

namespace hammerline::keyboard_strip {

struct StripStyle {
    wording::Palette palette{};
    /// Of labels and section names; give it a pixel size on paper, where point sizes are resolved against the device.
    QFont font{};
    std::optional<keyboard::Note> selected{};
    std::optional<keyboard::Note> pointedAt{};
    /// How much larger than usual `font` is: labels grow with it, keys do not.
    double textScale = 1;
    bool legend = false;
    bool focused = false;
};

[[nodiscard]] StripStyle screenStyle(const QWidget &widget);
/// Black on white; `pixelSize` of the type in the painter's units.
[[nodiscard]] StripStyle printStyle(int pixelSize);

/// Sections on top, then the keys, note names below, then the legend where wanted.
struct StripLayout {
    QRectF sections{};
    QRectF keys{};
    QRectF labels{};
    QRectF legend{};
};
[[nodiscard]] StripLayout layoutOf(const StripStyle &style, const QRectF &rect);
/// The keys of a strip painted into `rect`.
[[nodiscard]] StripGeometry geometryOf(const StripStyle &style, const QRectF &rect, const keyboard::Compass &compass);
/// The height that looks right for a width: keys in true proportion up to a limit.
[[nodiscard]] double heightFor(const StripStyle &style, const keyboard::Compass &compass, double width);

/// Paints all of it into `rect`; with `exposed`, at least what meets that rectangle.
void paintStrip(QPainter &painter, const QRectF &rect, const StripModel &model, const StripStyle &style,
                const QRectF &exposed = {});

/// What must be repainted when one key changes: the key with its label.
[[nodiscard]] QRectF dirtyRect(const QRectF &rect, const StripModel &model, const StripStyle &style,
                               keyboard::Note note);

} // namespace hammerline::keyboard_strip
