#pragma once
// Readings as a table: a row a note, a column a quantity that was read. Verdicts show as a mark and a colour.

#include "main_window/workshop.h"
#include "tolerance/takes_apart.h"
#include "wording/number_form.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace hammerline::main_window {

class ReadingModel : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit ReadingModel(QObject *parent = nullptr);
    /// Null pointers: an empty table. By the set, takes that differ too much are marked.
    void show(const instrument::Instrument *instrument, const PassInView *pass,
              const std::optional<tolerance::ToleranceSet> &set, const wording::NumberForm &form);
    [[nodiscard]] keyboard::Note noteAt(int row) const;
    [[nodiscard]] catalogue::Quantity quantityAt(int column) const { return m_quantities[static_cast<std::size_t>(column)]; }
    [[nodiscard]] QModelIndex indexOf(const Selection &selection) const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] const tolerance::Verdict *verdictAt(const QModelIndex &index) const;
    /// Null: the takes agree.
    [[nodiscard]] const tolerance::TakesApart *apartAt(const QModelIndex &index) const;
    [[nodiscard]] QString apartText(const QModelIndex &index) const;

    keyboard::Compass m_compass;
    int m_rows = 0;
    std::vector<catalogue::Quantity> m_quantities;
    tolerance::Judgement m_judgement;
    tolerance::PairsApart m_apart;
    wording::NumberForm m_form;
};

} // namespace hammerline::main_window
