#pragma once
// A row of small widgets that goes on in a further line where the width does not hold them all: at twice the text size
// a small screen shows everything, one line below the other, and nothing scrolls sideways.

#include <QLayout>

#include <memory>
#include <vector>

class QLabel;

namespace hammerline::wording {

class WrapRow : public QLayout {
public:
    /// `gap`: between two items of a line, and half of it between two lines.
    explicit WrapRow(int gap);
    ~WrapRow() override;

    void addItem(QLayoutItem *item) override;
    /// A field and its label, between which no line ends; the label is its buddy.
    void addPair(QLabel *label, QWidget *field);
    [[nodiscard]] int count() const override;
    [[nodiscard]] QLayoutItem *itemAt(int index) const override;
    [[nodiscard]] QLayoutItem *takeAt(int index) override;
    [[nodiscard]] QSize sizeHint() const override;    ///< all in one line
    [[nodiscard]] QSize minimumSize() const override; ///< one in a line
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    void setGeometry(const QRect &area) override;

private:
    enum class Deed { Measure, Place };
    /// The height that the lines take within the width of `area`.
    int walk(const QRect &area, Deed deed) const;

    std::vector<std::unique_ptr<QLayoutItem>> m_items;
    int m_gap;
};

} // namespace hammerline::wording
