#pragma once
// Before and after: two passes chosen, every quantity read in both a row, and under the rows what can be claimed of the
// one chosen, with the notes named that were mended, spoiled, or changed unlike the rest. A name goes to its note.

#include "analysis/before_after.h"
#include "wording/number_form.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLabel;
class QTableWidget;
class QTextBrowser;
class QUrl;

namespace hammerline::instrument_file {

class ChangePage : public QWidget {
    Q_OBJECT
public:
    explicit ChangePage(QWidget *parent = nullptr);

    struct Content {
        std::vector<readings::Pass> passes{}; ///< with readings, oldest first
        readings::PassId before = 0;
        readings::PassId after = 0;
        std::vector<analysis::QuantityChange> changes{};
        bool withheld = false; ///< a spot check is being read blind: nothing else is given
    };
    void show(Content content, const wording::NumberForm &form);
    using QWidget::show;

signals:
    void passesChosen(hammerline::readings::PassId before, hammerline::readings::PassId after);
    void noteChosen(hammerline::catalogue::Quantity quantity, hammerline::keyboard::Note note);

private:
    void fillPasses(QComboBox *box, readings::PassId chosen);
    void fillTable();
    void fitHeight();
    void tellChosen();
    void follow(const QUrl &link);
    [[nodiscard]] const analysis::QuantityChange *chosen() const;

    Content m_content;
    wording::NumberForm m_form;
    QComboBox *m_before;
    QComboBox *m_after;
    QTableWidget *m_table;
    QTextBrowser *m_story;
};

} // namespace hammerline::instrument_file
