#pragma once
// What the forms of this room share: named fields, the line that tells what is wrong, and numbers read from text.

#include "outcome/outcome.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

class QComboBox;
class QDialog;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QVBoxLayout;

namespace hammerline::instrument_file {

/// A labelled line in `form`; `name` is the object name, the label the accessible name.
QLineEdit *addLine(QFormLayout *form, const QString &label, const char *name, const QString &hint = {});
QPlainTextEdit *addText(QFormLayout *form, const QString &label, const char *name);
QComboBox *addChoice(QFormLayout *form, const QString &label, const char *name);

/// Two short lines with a word between them in one row, labelled by the first; `second` is the label of the other.
struct LinePair {
    QLineEdit *first;
    QLineEdit *second;
};
struct LineNames {
    QString label{};
    const char *name;
};
LinePair addPair(QFormLayout *form, const LineNames &first, const QString &between, const LineNames &second);

/// A form that scrolls where the screen is lower than the form, and follows the field that has the focus.
QFormLayout *addScrolledForm(QVBoxLayout *column);
/// As large as all its fields need, and no larger than the screen.
void openAtFullHeight(QDialog *dialog);

/// Ok and Cancel with `verb` on the first, and the line for faults above them. The line.
QLabel *addFoot(QDialog *dialog, QVBoxLayout *column, const QString &verb);

[[nodiscard]] std::string plain(const QLineEdit *line);

using Faults = std::vector<outcome::Fault>;
/// Blank: absent. What is no number, or not within [least, most], is added to `faults` with the field's name.
[[nodiscard]] std::optional<double> number(const QLineEdit *line, double least, double most, Faults &faults);

} // namespace hammerline::instrument_file
