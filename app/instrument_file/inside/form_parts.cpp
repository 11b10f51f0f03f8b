#include "instrument_file/inside/form_parts.h"

#include "wording/palette.h"

#include <QComboBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

namespace hammerline::instrument_file {

namespace {

void name(QWidget *field, const QString &label, const char *objectName)
{
    field->setObjectName(objectName);
    field->setAccessibleName(label);
}

/// Unlike its base it wants all the room that the form in it does.
class FormArea : public QScrollArea {
public:
    FormArea()
    {
        setFocusPolicy(Qt::NoFocus);
        setFrameShape(QFrame::NoFrame);
        setWidgetResizable(true);
    }
    [[nodiscard]] QSize sizeHint() const override
    {
        return widget()->sizeHint() + QSize(verticalScrollBar()->sizeHint().width(), 0);
    }
};

} // namespace

QLineEdit *addLine(QFormLayout *form, const QString &label, const char *objectName, const QString &hint)
{
    auto *line = new QLineEdit;
    name(line, label, objectName);
    line->setPlaceholderText(hint);
    line->setMinimumWidth(320);
    form->addRow(label, line);
    return line;
}

LinePair addPair(QFormLayout *form, const LineNames &first, const QString &between, const LineNames &second)
{
    const LinePair pair{new QLineEdit, new QLineEdit};
    name(pair.first, first.label, first.name);
    name(pair.second, second.label, second.name);
    auto *row = new QHBoxLayout;
    row->setSpacing(2 * wording::gridStep);
    row->addWidget(pair.first, 1);
    row->addWidget(new QLabel(between));
    row->addWidget(pair.second, 1);
    form->addRow(first.label, row);
    return pair;
}

QFormLayout *addScrolledForm(QVBoxLayout *column)
{
    auto *fields = new QWidget;
    auto *form = new QFormLayout(fields);
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(2 * wording::gridStep);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    auto *area = new FormArea;
    area->setWidget(fields);
    column->addWidget(area, 1);
    return form;
}

void openAtFullHeight(QDialog *dialog)
{
    constexpr int titleBar = 40;
    const QSize room = dialog->screen()->availableSize() - QSize(0, titleBar);
    dialog->resize(dialog->sizeHint().boundedTo(room));
}

QPlainTextEdit *addText(QFormLayout *form, const QString &label, const char *objectName)
{
    auto *text = new QPlainTextEdit;
    name(text, label, objectName);
    text->setTabChangesFocus(true);
    text->setFixedHeight(3 * text->fontMetrics().lineSpacing() + 4 * wording::gridStep);
    form->addRow(label, text);
    return text;
}

QComboBox *addChoice(QFormLayout *form, const QString &label, const char *objectName)
{
    auto *choice = new QComboBox;
    name(choice, label, objectName);
    form->addRow(label, choice);
    return choice;
}

QLabel *addFoot(QDialog *dialog, QVBoxLayout *column, const QString &verb)
{
    auto *faults = new QLabel;
    faults->setObjectName("formFaults");
    faults->setTextFormat(Qt::PlainText);
    faults->setWordWrap(true);
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    buttons->button(QDialogButtonBox::Ok)->setText(verb);
    buttons->button(QDialogButtonBox::Ok)->setObjectName("formAccept");
    QObject::connect(buttons, &QDialogButtonBox::accepted, dialog, &QDialog::accept);
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::reject);
    column->addWidget(faults);
    column->addWidget(buttons);
    return faults;
}

std::string plain(const QLineEdit *line)
{
    return line->text().trimmed().toStdString();
}

std::optional<double> number(const QLineEdit *line, double least, double most, Faults &faults)
{
    QString text = line->text().trimmed();
    if (text.isEmpty())
        return std::nullopt;
    bool ok = false;
    const double value = text.replace(',', '.').toDouble(&ok);
    if (ok && value >= least && value <= most)
        return value;
    const QString problem = QObject::tr("%1: '%2' should be a number from %3 to %4")
                                .arg(line->accessibleName(), line->text())
                                .arg(least)
                                .arg(most);
    faults.push_back({.problem = problem.toStdString()});
    return std::nullopt;
}

} // namespace hammerline::instrument_file
