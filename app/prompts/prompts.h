#pragma once
// Everything modal goes through this door: questions, notices, file choosers, a line of text. A room takes a Prompts
// by reference and never opens a message box itself, so that tests (and nobody else) can answer in advance; see
// queued_prompts.h. DialogPrompts is what people see.

#include <QString>
#include <QStringList>

#include <optional>

class QWidget;

namespace hammerline::prompts {

enum class Weight { Question, Warning };

struct Question {
    QString title{};
    QString text{};        ///< one sentence
    QString detail{};      ///< what follows from each choice; may be empty
    QStringList choices{}; ///< verbs, at least one: "Delete pass", "Keep"
    int preferred = 0;     ///< what Enter takes
    int whenClosed = -1;   ///< what Escape and closing take; -1: the last choice
    Weight weight = Weight::Question;
};

struct Notice {
    QString title{};
    QString text{};   ///< what went wrong
    QString detail{}; ///< what is safe and what to do; a list of faults
    Weight weight = Weight::Warning;
};

struct FileWish {
    enum class Use { Open, Save };
    Use use = Use::Open;
    QString title{};
    QString filter{};        ///< as QFileDialog takes it: "Readings (*.csv)"
    QString start{};         ///< folder or proposed file
    QString defaultSuffix{}; ///< put behind a name saved without one
};

struct TextWish {
    QString title{};
    QString label{};
    QString initial{};
    bool manyLines = false;
    bool hidden = false; ///< a passphrase: dots stand for what is typed
};

class Prompts {
public:
    virtual ~Prompts() = default;
    /// Index into `choices`.
    [[nodiscard]] virtual int ask(QWidget *parent, const Question &question) = 0;
    virtual void tell(QWidget *parent, const Notice &notice) = 0;
    /// Absent: the user thought better of it. An existing file chosen for saving was confirmed.
    [[nodiscard]] virtual std::optional<QString> chooseFile(QWidget *parent, const FileWish &wish) = 0;
    [[nodiscard]] virtual std::optional<QString> askText(QWidget *parent, const TextWish &wish) = 0;
};

/// Qt's own dialogs.
class DialogPrompts : public Prompts {
public:
    int ask(QWidget *parent, const Question &question) override;
    void tell(QWidget *parent, const Notice &notice) override;
    std::optional<QString> chooseFile(QWidget *parent, const FileWish &wish) override;
    std::optional<QString> askText(QWidget *parent, const TextWish &wish) override;
};

} // namespace hammerline::prompts
