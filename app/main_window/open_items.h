#pragma once
// Why a pass was not signed, to click through: each open item in a line; Enter or a double click stands on its note at
// the bench while the list stays beside it.

#include "review/review.h"
#include "wording/number_form.h"

#include <QDialog>

#include <vector>

class QListWidget;

namespace hammerline::main_window {

class OpenItems : public QDialog {
    Q_OBJECT
public:
    /// Worst first, as the queue has them; at least one.
    OpenItems(std::vector<review::Item> items, const wording::NumberForm &form, QWidget *parent);

signals:
    void chosen(const hammerline::review::Item &item);

private:
    std::vector<review::Item> m_items;
    QListWidget *m_list;
};

} // namespace hammerline::main_window
