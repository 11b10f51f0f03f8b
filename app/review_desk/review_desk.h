#pragma once
// The review desk: what waits for attention, worst first in units of its half-width. Over one pass it is the list of
// notes that are out; over the workshop it is the shop lead's queue. Enter or a double click goes to the note.
//
// The lead chooses rows, one or many, and accepts them as they are or sends them back; the desk asks for it, whoever
// owns it does it. What was accepted, and what was mended after it was sent back, is one list further: nothing leaves
// silently. So is what is in its limits, but within the gauge's doubt: nobody need decide about it.

#include "review_desk/item_filters.h"
#include "review_desk/item_model.h"
#include "wording/number_form.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

namespace hammerline::review_desk {

enum class Scope { OnePass, Workshop };

class ReviewDesk : public QWidget {
    Q_OBJECT
public:
    explicit ReviewDesk(Scope scope, QWidget *parent = nullptr);

    /// `judged` false: there is nothing to judge by yet, and the desk says so.
    void show(Desk desk, const wording::NumberForm &form, bool judged);
    [[nodiscard]] const ItemModel &model() const { return *m_model; }
    /// The keys go to the items; where there are none, to the choice of lists.
    void focusFirst();
    /// Rows chosen, in their order; only of the list of what waits.
    [[nodiscard]] std::vector<review::Item> chosenItems() const;

signals:
    void chosen(const hammerline::review::Item &item);
    void acceptWanted(const std::vector<hammerline::review::Item> &items);
    void sendBackWanted(const std::vector<hammerline::review::Item> &items);

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    /// Where the lead stands, to come back to when the items are other ones.
    struct Place {
        int row = -1;
        std::optional<review::Item> item{};
        std::vector<review::Item> chosen{};
    };
    [[nodiscard]] Place placeNow() const;
    [[nodiscard]] bool isListed(List list) const;
    void goBackTo(const Place &place);
    [[nodiscard]] QPushButton *addButton(const QString &text, const char *name);
    [[nodiscard]] QWidget *makeFoot();
    void fitColumns();
    void giveRoom();
    void followFilters();
    void tellCounts();
    void tellEmpty();
    void tellCurrent();
    [[nodiscard]] QString headlineText() const;
    [[nodiscard]] QString acceptedText() const;

    Scope m_scope;
    bool m_judged = false;
    std::vector<int> m_widths{}; ///< of the columns, each showing all of its contents
    ItemModel *m_model;
    ItemFilters *m_filters;
    QTableView *m_table;
    QLabel *m_headline;
    QLabel *m_withheld;
    QLabel *m_empty;
    QLabel *m_current; ///< the current row in full: its cells may be cut
    QComboBox *m_list;
    QPushButton *m_accept;
    QPushButton *m_sendBack;
};

} // namespace hammerline::review_desk
