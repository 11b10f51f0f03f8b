#pragma once
// The notes that want attention as a table model: one row an item, in the order given (worst first), filtered by kind,
// instrument, person, quantity and age. What was decided about is in the same list, and shown apart; so is what is in,
// but within the gauge's doubt. How probably a value truly lies inside is told wherever its doubt is known.

#include "review/review.h"
#include "wording/number_form.h"

#include <QAbstractTableModel>

#include <chrono>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace hammerline::review_desk {

using InstrumentNames = std::map<instrument::InstrumentId, QString>;

/// What the lead looks at.
struct Desk {
    std::vector<review::Item> items{};       ///< worst first
    std::vector<review::Settled> conceded{}; ///< accepted as they are
    std::vector<review::Settled> mended{};   ///< sent back and inside since
    InstrumentNames names{};
    readings::Instant now{};             ///< for the age of an item
    QString withheld{};                  ///< what is not listed now, and why; empty: everything is listed
    std::vector<review::Item> inDoubt{}; ///< in, but within the gauge's doubt; least sure first
};

/// Which of the four lists of a desk is shown.
enum class List { Waiting, Conceded, Mended, InDoubt };

/// An item is shown where it passes all of them.
struct Filters {
    std::set<review::Kind> kinds{review::Kind::Out, review::Kind::Marginal, review::Kind::Uneven};
    std::optional<instrument::InstrumentId> instrument{};
    std::optional<std::string> person{};
    std::optional<catalogue::Quantity> quantity{};
    std::chrono::hours olderThan{0};
};

class ItemModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Instrument, NoteColumn, QuantityColumn, Value, Off, Sure, Finding, Decided, ReadBy, columnTotal };

    explicit ItemModel(QObject *parent = nullptr);

    void setDesk(Desk desk, const wording::NumberForm &form);
    void setFilters(const Filters &filters);
    [[nodiscard]] const Filters &filters() const { return m_filters; }
    void setList(List list);
    /// Of all that waits, shown or not.
    [[nodiscard]] int countOf(review::Kind kind) const;
    [[nodiscard]] int countOf(List list) const;
    /// Does any row say how probably it lies inside?
    [[nodiscard]] bool anySure() const;
    [[nodiscard]] const Desk &desk() const { return m_desk; }
    [[nodiscard]] const review::Item &itemAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        const review::Item *item;
        const decisions::Decision *decision; ///< null: nobody has decided
    };
    void filter();
    void add(const review::Item &item, const decisions::Decision *decision);
    [[nodiscard]] QString textOf(const Row &row, int column) const;
    [[nodiscard]] QString decisionText(const Row &row) const;

    Desk m_desk;
    std::vector<Row> m_rows; ///< into m_desk
    Filters m_filters;
    List m_list = List::Waiting;
    wording::NumberForm m_form;
};

} // namespace hammerline::review_desk
