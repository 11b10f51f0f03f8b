#pragma once
// What two sets say, row by row: a quantity or an instrument, what is in, marginal and out now and then. Ten thousand
// rows are no more work than ten: a cell is worded when it is shown.

#include "shop/judge_shop.h"

#include <QAbstractTableModel>
#include <QLocale>

#include <vector>

namespace hammerline::main_window {

class RejudgeModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Name, InNow, InThen, MarginalNow, MarginalThen, OutNow, OutThen, MoreOut, columnTotal };
    struct Row {
        QString name{};
        shop::TwoSets counts{};
    };

    explicit RejudgeModel(QObject *parent = nullptr) : QAbstractTableModel(parent) {}

    void show(QString nameHead, std::vector<Row> rows);
    [[nodiscard]] const std::vector<Row> &rows() const { return m_rows; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    void sort(int column, Qt::SortOrder order) override;

private:
    QString m_nameHead;
    std::vector<Row> m_rows;
    QLocale m_locale;
};

} // namespace hammerline::main_window
