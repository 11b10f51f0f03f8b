#pragma once
// Condition by area, as received beside as it leaves: a step of the scale and the workshop's own words.

#include "dossier/dossier.h"

#include <QWidget>

#include <map>

class QComboBox;
class QGridLayout;
class QLineEdit;

namespace hammerline::instrument_file {

class ConditionPage : public QWidget {
    Q_OBJECT
public:
    explicit ConditionPage(QWidget *parent = nullptr);
    void show(const dossier::Conditions &conditions);
    using QWidget::show;

signals:
    /// A field was left or a step chosen, and says something else than was shown.
    void said(const hammerline::dossier::ConditionPlace &place, const hammerline::dossier::Condition &condition);

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    struct Fields {
        QComboBox *grade = nullptr;
        QLineEdit *words = nullptr;
    };
    void addFields(const dossier::ConditionPlace &place);
    void arrange(bool narrow);
    void tell(const dossier::ConditionPlace &place);

    QGridLayout *m_grid;
    bool m_narrow = false; ///< the words stand below their step
    std::map<dossier::ConditionPlace, Fields> m_fields;
    dossier::Conditions m_shown;
};

} // namespace hammerline::instrument_file
