#pragma once
// Prompts answered in advance, in order; nothing is shown. What was asked is kept for the test to read. A question
// nobody answered in advance throws std::logic_error with the question's text, so a test cannot pass by accident.

#include "prompts/prompts.h"

#include <deque>
#include <vector>

namespace hammerline::prompts {

class QueuedPrompts : public Prompts {
public:
    /// The label of a choice, or its index.
    void willChoose(const QString &choice);
    void willChoose(int index);
    void willPick(std::optional<QString> file);
    void willType(std::optional<QString> text);

    [[nodiscard]] const std::vector<Question> &questions() const { return m_questions; }
    [[nodiscard]] const std::vector<Notice> &notices() const { return m_notices; }
    [[nodiscard]] const std::vector<FileWish> &fileWishes() const { return m_fileWishes; }
    [[nodiscard]] const std::vector<TextWish> &textWishes() const { return m_textWishes; }
    /// True where every answer was asked for.
    [[nodiscard]] bool allUsed() const;

    int ask(QWidget *parent, const Question &question) override;
    void tell(QWidget *parent, const Notice &notice) override;
    std::optional<QString> chooseFile(QWidget *parent, const FileWish &wish) override;
    std::optional<QString> askText(QWidget *parent, const TextWish &wish) override;

private:
    struct Choice {
        QString label{};
        int index = -1;
    };
    std::deque<Choice> m_choices;
    std::deque<std::optional<QString>> m_files;
    std::deque<std::optional<QString>> m_texts;
    std::vector<Question> m_questions;
    std::vector<Notice> m_notices;
    std::vector<FileWish> m_fileWishes;
    std::vector<TextWish> m_textWishes;
};

} // namespace hammerline::prompts
