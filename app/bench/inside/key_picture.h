#pragma once
// The key that is asked for, among its neighbours: five keys, the asked one filled. Says natural or sharp without a
// word.

#include "keyboard/keyboard.h"

#include <QWidget>

#include <optional>

namespace hammerline::bench {

class KeyPicture : public QWidget {
    Q_OBJECT
public:
    explicit KeyPicture(QWidget *parent = nullptr);
    void setNote(std::optional<keyboard::Note> note);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    std::optional<keyboard::Note> m_note;
};

} // namespace hammerline::bench
