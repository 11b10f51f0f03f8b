#pragma once
// The row of filters over the desk: kinds to tick, and instrument, person, quantity and age to choose from. What can be
// chosen is what the desk holds; a choice that the desk no longer holds falls back to all.

#include "review_desk/item_model.h"

#include <QWidget>

class QCheckBox;
class QComboBox;

namespace hammerline::wording {
class WrapRow;
}

namespace hammerline::review_desk {

class ItemFilters : public QWidget {
    Q_OBJECT
public:
    /// `wide`: with the choice of instrument, person and age, for a list across the workshop.
    explicit ItemFilters(bool wide, QWidget *parent = nullptr);

    void offer(const Desk &desk);
    [[nodiscard]] Filters filters() const;

signals:
    void changed();

private:
    void addKind(review::Kind kind, const QString &label, const char *name);
    [[nodiscard]] QComboBox *addChoice(const QString &label, const char *name, bool shown);
    void offerIn(QComboBox *box, const QString &all, const std::map<QString, QVariant> &choices);

    wording::WrapRow *m_kindRow;
    wording::WrapRow *m_choiceRow;
    std::map<review::Kind, QCheckBox *> m_kinds;
    QComboBox *m_instrument;
    QComboBox *m_person;
    QComboBox *m_quantity;
    QComboBox *m_age;
};

} // namespace hammerline::review_desk
