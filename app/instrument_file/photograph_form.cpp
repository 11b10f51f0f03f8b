#include "instrument_file/photograph_form.h"

#include "instrument_file/inside/form_parts.h"
#include "wording/file_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPixmap>
#include <QVBoxLayout>

namespace hammerline::instrument_file {

PhotographForm::PhotographForm(dossier::Photograph known, const QByteArray &jpeg, const QStringList &views,
                               QWidget *parent)
    : QDialog(parent), m_known(std::move(known))
{
    setObjectName("photographForm");
    setWindowTitle(tr("Photograph"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *column = new QVBoxLayout(this);
    auto *picture = new QLabel;
    QPixmap pixels;
    pixels.loadFromData(jpeg, "JPEG");
    picture->setPixmap(pixels.scaled(480, 320, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    picture->setAlignment(Qt::AlignCenter);
    column->addWidget(picture);
    auto *form = new QFormLayout;
    column->addLayout(form);
    m_moment = addChoice(form, tr("Taken"), "photographMoment");
    for (const auto moment : {dossier::Moment::AsReceived, dossier::Moment::AsItLeaves})
        m_moment->addItem(wording::nameOf(moment), static_cast<int>(moment));
    m_moment->setCurrentIndex(static_cast<int>(m_known.moment));
    m_view = addChoice(form, tr("It shows"), "photographView");
    m_view->setEditable(true);
    m_view->addItems(views);
    m_view->lineEdit()->setPlaceholderText(tr("e.g. front, keys, action"));
    m_view->setCurrentText(QString::fromStdString(m_known.view));
    m_caption = addLine(form, tr("Caption"), "photographCaption");
    m_caption->setText(QString::fromStdString(m_known.caption));
    addFoot(this, column, tr("Store"));
    m_view->setFocus();
}

dossier::Photograph PhotographForm::entered() const
{
    dossier::Photograph made = m_known;
    made.moment = static_cast<dossier::Moment>(m_moment->currentData().toInt());
    const QString view = m_view->currentText().trimmed();
    const int known = m_view->findText(view, Qt::MatchFixedString); // whatever its capitals: it is the same view
    made.view = (known < 0 ? view : m_view->itemText(known)).toStdString();
    made.caption = plain(m_caption);
    return made;
}

void PhotographForm::accept()
{
    emit ready(entered());
    QDialog::accept();
}

} // namespace hammerline::instrument_file
