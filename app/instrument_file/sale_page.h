#pragma once
// Buyer and price, kept apart from everything else: no record tells them unless it is asked to.

#include "dossier/dossier.h"

#include <QWidget>

class QLineEdit;

namespace hammerline::instrument_file {

class SalePage : public QWidget {
    Q_OBJECT
public:
    explicit SalePage(QWidget *parent = nullptr);
    void show(const dossier::Sale &sale);
    using QWidget::show;

signals:
    /// A field was left and says something else than was shown.
    void noted(const hammerline::dossier::Sale &sale);

private:
    void tell();

    dossier::Sale m_shown;
    QLineEdit *m_buyer, *m_price, *m_remark;
};

} // namespace hammerline::instrument_file
