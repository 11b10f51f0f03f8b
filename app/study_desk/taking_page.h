#pragma once
// Taking a study at the desk: who reads, which note, a field; nothing of what was read before. Enter keeps the value
// and asks for the next; Up on an empty field asks for the last one again.

#include "study_desk/taking.h"

#include <QWidget>

#include <memory>

class QLabel;
class QLineEdit;

namespace hammerline::study_desk {

class TakingPage : public QWidget {
    Q_OBJECT
public:
    explicit TakingPage(QWidget *parent = nullptr);

    /// Null: none. What stands in the field stays where the same stop is asked for. `piano`: whose notes are read;
    /// empty where nobody said.
    void work(std::unique_ptr<Taking> taking, const QString &piano = {});
    [[nodiscard]] const Taking *taking() const { return m_taking.get(); }
    void focusField();
    /// A value from a gauge on its cable, as if it had been typed and entered.
    void take(const QString &typed);
    void refuse(const QString &why);

signals:
    /// A trial was kept, or the last one taken back.
    void written();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void enter();
    void mend();
    void ask();
    void say(const QString &text);

    std::unique_ptr<Taking> m_taking;
    std::optional<analysis::StudyStop> m_shown;
    QString m_piano;
    QLabel *m_person, *m_hand, *m_note, *m_quantity, *m_said, *m_progress;
    QLineEdit *m_field;
};

} // namespace hammerline::study_desk
