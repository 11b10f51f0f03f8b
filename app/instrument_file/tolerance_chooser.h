#pragma once
// Choosing what an instrument is judged by: a built-in set or a file, every number shown with its source.

#include "catalogue/catalogue.h"
#include "exchange/built_in.h"
#include "instrument_file/studied_row.h"
#include "prompts/prompts.h"
#include "wording/number_form.h"

#include <QDialog>

#include <vector>

class QLabel;
class QListWidget;
class QTableWidget;

namespace hammerline::instrument_file {

class ToleranceChooser : public QDialog {
    Q_OBJECT
public:
    /// Offers the sets for `action`; `current` is preselected where it is among them.
    ToleranceChooser(catalogue::ActionKind action, const std::string &current, const wording::NumberForm &form,
                     prompts::Prompts &prompts, QWidget *parent = nullptr);

    /// One more set to choose, in the place of one of the same id, and chosen until another is.
    void offer(exchange::NamedSet set);
    /// What the studies of this workshop found: a set may count with one of them, and is then a set of its own.
    void offerStudies(std::vector<tolerance::FoundUncertainty> found);

signals:
    /// `set.text` is the JSON as read.
    void chosen(const hammerline::exchange::NamedSet &set);

public slots:
    void accept() override;

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    [[nodiscard]] QWidget *makeHead();
    void giveSourcesRoom();
    void add(exchange::NamedSet set);
    void openFile();
    void countWith(const tolerance::FoundUncertainty &found, tolerance::Rule rule);
    void showSet(int index);

    catalogue::ActionKind m_action;
    wording::NumberForm m_form;
    prompts::Prompts &m_prompts;
    std::vector<exchange::NamedSet> m_sets;
    QListWidget *m_list;
    QTableWidget *m_table;
    StudiedRow *m_studied;
    QLabel *m_about;
    QLabel *m_faults;
};

} // namespace hammerline::instrument_file
