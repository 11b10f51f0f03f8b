#include "main_window/person_label.h"

namespace hammerline::main_window {

QString inTheNameOf(const std::string &person)
{
    return (person.empty() ? PersonLabel::tr("In nobody’s name yet.")
                           : PersonLabel::tr("In the name of %1.").arg(QString::fromStdString(person))) +
           ' ' + PersonLabel::tr("“Who is measuring” in the menu Deeds changes it.");
}

PersonLabel::PersonLabel(const Workshop &workshop, QWidget *parent) : QLabel(parent), m_workshop(workshop)
{
    setObjectName("personLabel");
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    connect(&workshop, &Workshop::instrumentsChanged, this, &PersonLabel::tell);
    connect(&workshop, &Workshop::passChosen, this, &PersonLabel::tell);
    tell();
}

void PersonLabel::tell()
{
    const std::string person = m_workshop.stamp().person;
    setText(person.empty() ? tr("In nobody’s name") : tr("In the name of %1").arg(QString::fromStdString(person)));
    setToolTip(inTheNameOf(person));
}

} // namespace hammerline::main_window
