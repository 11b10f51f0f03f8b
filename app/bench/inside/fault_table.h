#pragma once
// The list of felt faults to be edited: a letter and a word in each row. Tab leaves the table; the arrow keys move
// within it, typing or F2 edits.

#include "bench/fault_words.h"

#include <QTableWidget>

namespace hammerline::bench {

class FaultTable : public QTableWidget {
    Q_OBJECT
public:
    explicit FaultTable(QWidget *parent = nullptr);
    void show(const std::vector<FaultWord> &words);
    /// As written, right or wrong; rows without letter and word are left out. A letter of more than one character is
    /// none.
    [[nodiscard]] std::vector<FaultWord> words() const;

public slots:
    void add(); ///< an empty row at the end, ready to be written
    void removeCurrent();

private:
    void addRow(const QString &letter, const QString &word);
};

} // namespace hammerline::bench
