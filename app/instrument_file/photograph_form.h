#pragma once
// What is said of a photograph: when it was taken, what it shows, a caption. Those of one view and of both moments
// stand side by side.

#include "dossier/dossier.h"

#include <QByteArray>
#include <QDialog>

class QComboBox;
class QLineEdit;

namespace hammerline::instrument_file {

class PhotographForm : public QDialog {
    Q_OBJECT
public:
    /// `views`: those there are, to choose from.
    PhotographForm(dossier::Photograph known, const QByteArray &jpeg, const QStringList &views,
                   QWidget *parent = nullptr);
    /// What the fields say now.
    [[nodiscard]] dossier::Photograph entered() const;

signals:
    void ready(const hammerline::dossier::Photograph &photograph);

public slots:
    void accept() override;

private:
    dossier::Photograph m_known;
    QComboBox *m_moment = nullptr, *m_view = nullptr;
    QLineEdit *m_caption = nullptr;
};

} // namespace hammerline::instrument_file
