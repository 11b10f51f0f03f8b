#include "prompts/queued_prompts.h"

#include <stdexcept>

namespace hammerline::prompts {

namespace {

template <typename Answer>
Answer next(std::deque<Answer> &queue, const QString &asked)
{
    if (queue.empty())
        throw std::logic_error("nobody answered in advance: " + asked.toStdString());
    Answer answer = queue.front();
    queue.pop_front();
    return answer;
}

} // namespace

void QueuedPrompts::willChoose(const QString &choice)
{
    m_choices.push_back({choice, -1});
}

void QueuedPrompts::willChoose(int index)
{
    m_choices.push_back({{}, index});
}

void QueuedPrompts::willPick(std::optional<QString> file)
{
    m_files.push_back(std::move(file));
}

void QueuedPrompts::willType(std::optional<QString> text)
{
    m_texts.push_back(std::move(text));
}

bool QueuedPrompts::allUsed() const
{
    return m_choices.empty() && m_files.empty() && m_texts.empty();
}

int QueuedPrompts::ask(QWidget *, const Question &question)
{
    m_questions.push_back(question);
    const Choice choice = next(m_choices, question.text);
    const int index = choice.index >= 0 ? choice.index : static_cast<int>(question.choices.indexOf(choice.label));
    if (index < 0 || index >= question.choices.size())
        throw std::logic_error("no such choice in: " + question.text.toStdString());
    return index;
}

void QueuedPrompts::tell(QWidget *, const Notice &notice)
{
    m_notices.push_back(notice);
}

std::optional<QString> QueuedPrompts::chooseFile(QWidget *, const FileWish &wish)
{
    m_fileWishes.push_back(wish);
    return next(m_files, wish.title);
}

std::optional<QString> QueuedPrompts::askText(QWidget *, const TextWish &wish)
{
    m_textWishes.push_back(wish);
    return next(m_texts, wish.label);
}

} // namespace hammerline::prompts
