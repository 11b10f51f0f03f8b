#pragma once
// The review desk: what waits for attention, worst first in units of its half-width. Over one pass it is the list of
// notes that are out; over the workshop it is the shop lead's queue. Enter or a double click goes to the note.

#include "review/review.h"
#include "review_desk/item_model.h"
#include "wording/number_form.h"

#include <QWidget>

#include <map>
#include <vector>

class QCheckBox;
class QLabel;
class QTableView;

namespace hammerline::review_desk {

enum class Scope { OnePass, Workshop };

class ReviewDesk : public QWidget {
    Q_OBJECT
public:
    explicit ReviewDesk(Scope scope, QWidget *parent = nullptr);

    /// `judged` false: there is nothing to judge by yet, and the desk says so.
    void show(std::vector<review::Item> items, InstrumentNames names, const wording::NumberForm &form, bool judged);
    [[nodiscard]] const ItemModel &model() const { return *m_model; }

signals:
    void chosen(const hammerline::review::Item &item);

private:
    void addFilter(review::Kind kind, const QString &label, const char *name);
    void tellCounts();

    Scope m_scope;
    bool m_judged = false;
    ItemModel *m_model;
    QTableView *m_table;
    QLabel *m_headline;
    QLabel *m_empty;
    std::map<review::Kind, QCheckBox *> m_filters;
};

} // namespace hammerline::review_desk
