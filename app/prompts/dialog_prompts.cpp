#include "prompts/prompts.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileIconProvider>
#include <QFileInfo>
#include <QFontMetrics>
#include <QGridLayout>
#include <QInputDialog>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QScreen>

#include <algorithm>
#include <vector>

namespace hammerline::prompts {

namespace {

constexpr int widestLetters = 60; ///< of a line that is read with ease, at any text size

/// That the title bar shows all of its title, with room for the window's own buttons.
int widthOfTitle(const QWidget &dialog, const QString &title)
{
    constexpr int besideTitle = 140;
    QFont bold = dialog.font();
    bold.setBold(true);
    return QFontMetrics(bold).horizontalAdvance(title) + besideTitle;
}

/// A message box sizes itself by its layout and by nothing else.
void giveTitleRoom(QMessageBox &box, const QString &title)
{
    if (auto *grid = qobject_cast<QGridLayout *>(box.layout()))
        grid->addItem(new QSpacerItem(widthOfTitle(box, title), 0), grid->rowCount(), 0, 1, grid->columnCount());
}

void fill(QMessageBox &box, const QString &title, const QString &text, const QString &detail, Weight weight)
{
    box.setWindowTitle(title);
    box.setTextFormat(Qt::PlainText);
    box.setText(text);
    box.setInformativeText(detail);
    box.setIcon(weight == Weight::Warning ? QMessageBox::Warning : QMessageBox::Question);
}

/// A message box is never wider than Qt's own limit, whatever its buttons want: those that do not fit in a row within
/// it stand one below the other.
void giveButtonsRoom(QMessageBox &box)
{
    constexpr int smallScreen = 1024, besideBox = 480, widestBox = 1000; // as QMessageBox has them
    const int screen = box.screen()->availableGeometry().width();
    const int limit = screen <= smallScreen ? screen : std::min(screen - besideBox, widestBox);
    auto *buttons = box.findChild<QDialogButtonBox *>();
    if (buttons == nullptr)
        return;
    box.ensurePolished();
    const QMargins margins = box.layout()->contentsMargins();
    if (buttons->sizeHint().width() + margins.left() + margins.right() > limit)
        buttons->setOrientation(Qt::Vertical);
}

/// Qt's own looks into files whose name does not tell their kind. To open and close the logbook that is in use would
/// take away SQLite's locks on it (logbook/inside/held_files.h).
class NamesOnly : public QFileIconProvider {
public:
    using QFileIconProvider::icon;
    [[nodiscard]] QIcon icon(const QFileInfo &info) const override
    {
        return QFileIconProvider::icon(info.isDir() ? Folder : File);
    }
    [[nodiscard]] QString type(const QFileInfo &info) const override
    {
        return info.isDir() ? QObject::tr("Folder") : QObject::tr("%1 file").arg(info.suffix()).trimmed();
    }
};

void setUp(QFileDialog &dialog, const FileWish &wish)
{
    dialog.setOption(QFileDialog::DontUseNativeDialog); // a desktop's own looks into files as well
    const bool saving = wish.use == FileWish::Use::Save;
    dialog.setWindowTitle(wish.title);
    dialog.setAcceptMode(saving ? QFileDialog::AcceptSave : QFileDialog::AcceptOpen);
    dialog.setFileMode(saving ? QFileDialog::AnyFile : QFileDialog::ExistingFile);
    dialog.setDefaultSuffix(wish.defaultSuffix);
    if (!wish.filter.isEmpty())
        dialog.setNameFilter(wish.filter);
    if (wish.start.isEmpty())
        return;
    const QFileInfo start(wish.start);
    dialog.setDirectory(start.isDir() ? start.filePath() : start.path());
    if (!start.isDir())
        dialog.selectFile(start.fileName());
}

} // namespace

int DialogPrompts::ask(QWidget *parent, const Question &question)
{
    QMessageBox box(parent);
    fill(box, question.title, question.text, question.detail, question.weight);
    std::vector<QPushButton *> buttons;
    for (const QString &choice : question.choices)
        buttons.push_back(box.addButton(choice, QMessageBox::ActionRole));
    const int last = static_cast<int>(buttons.size()) - 1;
    const int whenClosed = question.whenClosed < 0 ? last : question.whenClosed;
    box.setDefaultButton(buttons.at(static_cast<std::size_t>(question.preferred)));
    box.setEscapeButton(buttons.at(static_cast<std::size_t>(whenClosed)));
    giveButtonsRoom(box);
    giveTitleRoom(box, question.title);
    box.exec();
    for (int index = 0; index <= last; ++index)
        if (buttons[static_cast<std::size_t>(index)] == box.clickedButton())
            return index;
    return whenClosed;
}

void DialogPrompts::tell(QWidget *parent, const Notice &notice)
{
    QMessageBox box(parent);
    fill(box, notice.title, notice.text, notice.detail, notice.weight);
    if (notice.weight != Weight::Warning)
        box.setIcon(QMessageBox::Information);
    box.setStandardButtons(QMessageBox::Close);
    giveTitleRoom(box, notice.title);
    box.exec();
}

std::optional<QString> DialogPrompts::chooseFile(QWidget *parent, const FileWish &wish)
{
    NamesOnly names;
    QFileDialog dialog(parent);
    dialog.setIconProvider(&names);
    setUp(dialog, wish);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return std::nullopt;
    return dialog.selectedFiles().constFirst();
}

std::optional<QString> DialogPrompts::askText(QWidget *parent, const TextWish &wish)
{
    QInputDialog dialog(parent);
    dialog.setWindowTitle(wish.title);
    dialog.setLabelText(wish.label);
    dialog.setTextValue(wish.initial);
    dialog.setTextEchoMode(wish.hidden ? QLineEdit::Password : QLineEdit::Normal);
    dialog.setOption(QInputDialog::UsePlainTextEditForTextInput, wish.manyLines);
    for (auto *label : dialog.findChildren<QLabel *>()) { // made with the text; a long one is not to widen the dialog
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        const int letters = std::min(widestLetters, static_cast<int>(wish.label.size()));
        label->setMinimumWidth(
            std::max(letters * label->fontMetrics().averageCharWidth(), widthOfTitle(dialog, wish.title)));
    }
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.textValue()) : std::nullopt;
}

} // namespace hammerline::prompts
