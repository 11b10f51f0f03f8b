#pragma once
// The summary of a pass as a table: a row a quantity.

#include "analysis/analysis.h"
#include "wording/number_form.h"

#include <QAbstractTableModel>

#include <vector>

namespace hammerline::main_window {

class SummaryModel : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit SummaryModel(QObject *parent = nullptr);
    void show(const analysis::Summaries &summaries, const wording::NumberForm &form);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<std::pair<catalogue::Quantity, analysis::QuantitySummary>> m_rows;
    wording::NumberForm m_form;
};

} // namespace hammerline::main_window
