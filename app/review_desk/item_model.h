#pragma once
// The notes that want attention as a table model: one row an item, in the order given (worst first), filtered by kind.

#include "review/review.h"
#include "wording/number_form.h"

#include <QAbstractTableModel>

#include <map>
#include <set>
#include <vector>

namespace hammerline::review_desk {

using InstrumentNames = std::map<instrument::InstrumentId, QString>;

class ItemModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Instrument, NoteColumn, QuantityColumn, Value, Off, Finding, columnTotal };

    explicit ItemModel(QObject *parent = nullptr);

    void setItems(std::vector<review::Item> items, InstrumentNames names, const wording::NumberForm &form);
    void setShown(review::Kind kind, bool shown);
    [[nodiscard]] bool isShown(review::Kind kind) const { return m_kinds.contains(kind); }
    /// Of all items, shown or not.
    [[nodiscard]] int countOf(review::Kind kind) const;
    [[nodiscard]] const review::Item &itemAt(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void filter();
    [[nodiscard]] QString textOf(const review::Item &item, int column) const;

    std::vector<review::Item> m_items;
    std::vector<std::size_t> m_rows; ///< indices into m_items
    std::set<review::Kind> m_kinds{review::Kind::Out, review::Kind::Marginal, review::Kind::Uneven};
    InstrumentNames m_names;
    wording::NumberForm m_form;
};

} // namespace hammerline::review_desk
