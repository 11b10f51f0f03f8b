#pragma once
// The foot of the window: the strip across the whole width, what it shows, and the story of the key that is pointed at.

#include "keyboard_strip/keyboard_strip.h"
#include "main_window/workshop.h"
#include "wording/number_form.h"

#include <QWidget>

class QCheckBox;
class QLabel;

namespace hammerline::main_window {

class StripArea : public QWidget {
    Q_OBJECT
public:
    explicit StripArea(Workshop &workshop, QWidget *parent = nullptr);
    void setForm(const wording::NumberForm &form);
    [[nodiscard]] keyboard_strip::KeyboardStrip &strip() { return *m_strip; }

signals:
    void noteChosen(hammerline::keyboard::Note note);

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void showAll();
    void followSelection();
    void tell(const QString &story);
    void elideStory();
    [[nodiscard]] keyboard_strip::StripModel modelNow() const;

    Workshop &m_workshop;
    wording::NumberForm m_form;
    keyboard_strip::KeyboardStrip *m_strip;
    QLabel *m_caption;
    QLabel *m_story;
    QCheckBox *m_worst;
    QString m_chosenStory;
    std::optional<catalogue::Quantity> m_shown;
};

} // namespace hammerline::main_window
