#pragma once
// Named rows with two bars each, the first hollow, the second filled: out as found and as left, hours planned and
// taken. Titled with the question; readable in black alone. What does not fit is told, not squeezed.

#include "outcome/outcome.h"
#include "wording/palette.h"

#include <QRectF>
#include <QString>
#include <QWidget>

#include <optional>
#include <string>
#include <vector>

class QPainter;

namespace hammerline::charts {

struct BarsData {
    QString title{};
    QString answer{};
    QString axis{}; ///< "Notes out (%)"
    QString firstName{};
    QString secondName{};
    struct Row {
        QString label{};
        std::optional<double> first{}, second{}; ///< 0 and up
        QString firstText{}, secondText{};       ///< beside their bars
    };
    std::vector<Row> rows{};
    bool keepLast = false; ///< where not all rows fit, the last ones are shown, else the first
    std::string csv{};     ///< the figures behind it
};

/// `pixelSize` is that of its small type in the painter's units.
void renderBars(QPainter &painter, const QRectF &rect, const BarsData &data, const wording::Palette &palette,
                int pixelSize);
/// PNG, SVG, PDF or CSV, as exportChart does it.
[[nodiscard]] outcome::Outcome<QString> exportBars(const BarsData &data, const QString &path,
                                                   const wording::Palette &palette);

class BarsPane : public QWidget {
    Q_OBJECT
public:
    explicit BarsPane(QWidget *parent = nullptr);
    [[nodiscard]] const BarsData &data() const { return m_data; }
    void setData(BarsData data);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    BarsData m_data{};
};

} // namespace hammerline::charts
